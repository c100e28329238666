namespace Chandlery.Cli.Commands;

/// <summary>A line of the catalogue's table.</summary>
/// <param name="Cells">What stands in its columns.</param>
/// <param name="StopsSale">True when something stops the sale.</param>
internal sealed record CatalogueLine(string[] Cells, bool StopsSale);

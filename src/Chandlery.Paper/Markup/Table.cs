namespace Chandlery.Paper.Markup;

/// <summary>A table with a thin line under each row.</summary>
/// <param name="Widths">Width of each column as a share of the whole; they add up to 1.</param>
/// <param name="Rows">Rows.</param>
public sealed record Table(IReadOnlyList<double> Widths, IReadOnlyList<TableRow> Rows) : Block;

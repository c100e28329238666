namespace Chandlery.Cli.Answers;

/// <summary>A product in a gift set, for programs.</summary>
/// <param name="Count">How many.</param>
/// <param name="Candle">Name of the declaration.</param>
/// <param name="Name">Trade name.</param>
internal sealed record SetProduct(int Count, string Candle, string Name);

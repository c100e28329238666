namespace Chandlery.Paper.Markup;

/// <summary>Messages beside their symbols, in columns.</summary>
/// <param name="Items">Symbol (empty for a plain line) and text.</param>
/// <param name="Columns">Number of columns.</param>
/// <param name="SideMm">Side of a symbol.</param>
public sealed record Messages(IReadOnlyList<(string Symbol, string Text)> Items, int Columns, double SideMm) : Block;

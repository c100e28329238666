namespace Chandlery.Paper.Markup;

/// <summary>A row of burn-safety symbols.</summary>
/// <param name="Symbols">Names, each with a caption (empty for none).</param>
/// <param name="SideMm">Side of a symbol.</param>
public sealed record SymbolRow(IReadOnlyList<(string Name, string Caption)> Symbols, double SideMm) : Block;

namespace Chandlery.Core.SafetyDataSheets;

/// <summary>A table; a heading row only where <paramref name="Heads"/> has texts.</summary>
/// <param name="Widths">Shares of the width.</param>
/// <param name="Heads">Headings; empty for a list of pairs.</param>
/// <param name="Rows">Rows.</param>
public sealed record SheetTable(IReadOnlyList<int> Widths, IReadOnlyList<string> Heads, IReadOnlyList<IReadOnlyList<string>> Rows)
    : SheetBlock;

namespace Chandlery.Paper.Blocks;

/// <summary>A row of a table.</summary>
/// <param name="Cells">Text of each cell.</param>
/// <param name="IsHeading">Set in bold and repeated on every page.</param>
public sealed record TableRow(IReadOnlyList<IReadOnlyList<Span>> Cells, bool IsHeading);

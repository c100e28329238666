namespace Chandlery.Sheets.Wild;

/// <summary>A table.</summary>
/// <param name="Head">Heading rows; none for a table of labels and values.</param>
/// <param name="Rows">Body rows.</param>
/// <param name="Widths">Widths of the columns in proportion.</param>
/// <param name="Rules">Which lines are drawn.</param>
/// <param name="IsMiddle">True when cells stand in the middle of their row's height instead of at its top.</param>
/// <param name="RepeatsHead">True when the heading comes again on each page.</param>
public sealed record TableBlock(
    IReadOnlyList<IReadOnlyList<TableCell>> Head,
    IReadOnlyList<IReadOnlyList<TableCell>> Rows,
    IReadOnlyList<double> Widths,
    TableRules Rules,
    bool IsMiddle,
    bool RepeatsHead
) : Block;

using Chandlery.Core.SafetyDataSheets;

namespace Chandlery.Core.SafetyFiles.Records;

/// <summary>A section of a kept document.</summary>
/// <param name="Title">Its heading.</param>
/// <param name="Blocks">Texts and tables.</param>
public sealed record RecordSection(string Title, IReadOnlyList<SheetBlock> Blocks)
{
    /// <summary>A table with a heading row; a sentence where there are no rows.</summary>
    public static IReadOnlyList<SheetBlock> Table(
        IReadOnlyList<int> widths,
        IReadOnlyList<string> heads,
        IReadOnlyList<IReadOnlyList<string>> rows,
        string ifNone
    ) => rows.Count == 0 ? [new SheetText(ifNone)] : [new SheetTable(widths, heads, rows)];

    /// <summary>Pairs of a name and what is said of it.</summary>
    public static SheetBlock Pairs(params IEnumerable<(string Name, string Text)> pairs) =>
        new SheetTable([28, 72], [], [.. pairs.Select(p => new[] { p.Name, p.Text })]);

    /// <summary>A paragraph for each sentence.</summary>
    public static IEnumerable<SheetBlock> Texts(IEnumerable<string> sentences) => sentences.Select(s => new SheetText(s));
}

namespace Chandlery.Paper.Blocks;

/// <summary>The blocks there are.</summary>
internal static class BlockKinds
{
    /// <summary>The kinds, in the order in which messages name them.</summary>
    public static IReadOnlyList<BlockKind> All { get; } =
    [
        Paragraph.Kind,
        Ends.Kind,
        Pictograms.Kind,
        SymbolRow.Kind,
        Messages.Kind,
        Codes.Kind,
        Table.Kind,
        Plots.Kind,
        Depiction.Kind,
        Gap.Kind,
        Rule.Kind,
        ColumnStart.Kind,
        Push.Kind,
    ];

    /// <summary>The kind of an element; null when there is none.</summary>
    public static BlockKind? Find(string element) => All.FirstOrDefault(k => k.Element == element);
}

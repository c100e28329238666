using Chandlery.Paper.Blocks;
using Chandlery.Paper.Symbols;

namespace Chandlery.Paper.Layout;

/// <summary>Stacks blocks from top to bottom inside a region.</summary>
internal static class FlowLayout
{
    private const double MostOfSpare = 0.9;
    private const double MostEm = 0.7;

    /// <summary>Lays blocks out; the result may end below the region, which then is too small.</summary>
    public static LayoutResult Lay(IReadOnlyList<Block> blocks, Region region, LayoutSizes sizes, SymbolSheet symbols) =>
        Lay(blocks, new Flow(region, sizes, symbols, placing: true));

    /// <summary>Lays blocks out so that gaps share the room that would be left over, up to most of a line each.</summary>
    /// <param name="blocks">The blocks.</param>
    /// <param name="region">Makes the room anew.</param>
    /// <param name="sizes">Text sizes.</param>
    /// <param name="symbols">Drawings.</param>
    public static LayoutResult LayLoosely(IReadOnlyList<Block> blocks, Func<Region> region, LayoutSizes sizes, SymbolSheet symbols)
    {
        int gaps = blocks.Count(b => b is Gap);
        Region room = region();
        double spare = gaps == 0 || room.IsRound ? 0 : room.BottomMm - Measure(blocks, region(), sizes, symbols).EndMm;
        double each = spare <= 0 ? 0 : Math.Min(spare / gaps * MostOfSpare, sizes.TypeSizeMm * MostEm);
        return Lay(blocks, room, sizes with { SpareGapMm = each }, symbols);
    }

    /// <summary>What a layout would come to, without its items and marks: most sizes are only tried.</summary>
    public static LayoutResult Measure(IReadOnlyList<Block> blocks, Region region, LayoutSizes sizes, SymbolSheet symbols)
    {
        var flow = new Flow(region, sizes, symbols, placing: false);
        foreach (Block block in blocks)
        {
            block.Lay(flow);
        }

        return flow.Result();
    }

    private static LayoutResult Lay(IReadOnlyList<Block> blocks, Flow flow)
    {
        foreach (Block block in blocks)
        {
            flow.Tagged(block.Role, block.Language, () => block.Lay(flow));
        }

        return flow.Result();
    }
}

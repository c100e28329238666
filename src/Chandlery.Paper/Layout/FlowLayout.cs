using Chandlery.Paper.Blocks;
using Chandlery.Paper.Symbols;

namespace Chandlery.Paper.Layout;

/// <summary>Stacks blocks from top to bottom inside a region.</summary>
internal static class FlowLayout
{
    /// <summary>Lays blocks out; the result may end below the region, which then is too small.</summary>
    public static LayoutResult Lay(IReadOnlyList<Block> blocks, Region region, LayoutSizes sizes, SymbolSheet symbols) =>
        Lay(blocks, new Flow(region, sizes, symbols, placing: true));

    /// <summary>What a layout would come to, without its items and marks: most sizes are only tried.</summary>
    public static LayoutResult Measure(IReadOnlyList<Block> blocks, Region region, LayoutSizes sizes, SymbolSheet symbols) =>
        Lay(blocks, new Flow(region, sizes, symbols, placing: false));

    private static LayoutResult Lay(IReadOnlyList<Block> blocks, Flow flow)
    {
        foreach (Block block in blocks)
        {
            block.Lay(flow);
        }

        return flow.Result;
    }
}

using Chandlery.Paper.Blocks;
using Chandlery.Paper.Symbols;

namespace Chandlery.Paper.Layout;

/// <summary>A column of endless height that blocks are set into one after the other, for the height that they have come to.</summary>
/// <param name="leftMm">Left edge, millimetres.</param>
/// <param name="rightMm">Right edge, millimetres.</param>
/// <param name="sizes">Text sizes.</param>
/// <param name="symbols">Drawings.</param>
internal sealed class GrowingColumn(double leftMm, double rightMm, LayoutSizes sizes, SymbolSheet symbols)
{
    private readonly Flow flow = new(Region.Rectangle(leftMm, 0, rightMm, double.PositiveInfinity), sizes, symbols, placing: false);

    /// <summary>Height of what stands in it, millimetres; infinite when something is too wide for it.</summary>
    public double HeightMm => flow.OverflowMm > 0 ? double.PositiveInfinity : flow.EndMm;

    /// <summary>Lower end of what stands in it, millimetres, be it too wide or not.</summary>
    public double EndMm => flow.EndMm;

    /// <summary>Sets a block below the others.</summary>
    public void Add(Block block) => block.Lay(flow);

    /// <summary>Height of a block in a column of its own, millimetres; infinite when it is too wide. For a column without pictograms.</summary>
    public double HeightOfOnly(Block block)
    {
        flow.Restart();
        block.Lay(flow);
        return HeightMm;
    }
}

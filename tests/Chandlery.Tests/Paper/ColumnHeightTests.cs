using Chandlery.Paper.Blocks;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Layout;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Paper;

/// <summary>A stretch that grew block by block is as high as one that is laid out whole.</summary>
public sealed class ColumnHeightTests
{
    private static readonly LayoutSizes Sizes = new(1.4, 1.25, 9);

    private static Paragraph Text(string text) => new([new Span(text, Weight.Regular)], 1, 0, Align.Left);

    // Pictograms in the middle: stretches before them, over them and behind them.
    private static readonly IReadOnlyList<Block> Blocks =
    [
        Text("Harbour Bowl, a candle for the garden table"),
        new Gap(0.5),
        new Pictograms(["GHS07", "GHS09"]),
        Text("Contains what may produce an allergic reaction in those who know it already."),
        Text("Keep out of reach of children."),
        new Gap(0.5),
        Text("Collect spillage, and ask before you throw it away with anything else."),
        Text("Kelp Lane 3"),
    ];

    [Theory]
    [InlineData(22)]
    [InlineData(34)]
    [InlineData(61)]
    public void Every_stretch_is_as_high_as_it_is_laid_out(double width)
    {
        var heights = new ColumnHeights(width, Blocks, Sizes, TestLaw.Shop.Symbols);
        for (int first = 0; first < Blocks.Count; first++)
        {
            for (int end = Blocks.Count; end > first; end--)
            {
                LayoutResult whole = FlowLayout.Measure(
                    [.. Blocks.Skip(first).Take(end - first)],
                    Region.Rectangle(0, 0, width, double.PositiveInfinity),
                    Sizes,
                    TestLaw.Shop.Symbols
                );
                Assert.Equal(whole.OverflowMm > 0 ? double.PositiveInfinity : whole.EndMm, heights.Of(first, end), 9);
            }
        }
    }

    [Fact]
    public void Columns_that_differ_in_the_last_bit_share_the_narrower_width()
    {
        double[] widths = ColumnHeights.Widths([(0, 30), (40, 70 + 1e-12), (80, 100)]);
        Assert.Equal([30, 30, 20], widths);
        ColumnHeights[] heights = ColumnHeights.ForEach(widths, Blocks, Sizes, TestLaw.Shop.Symbols);
        Assert.Same(heights[0], heights[1]);
        Assert.NotSame(heights[0], heights[2]);
    }
}

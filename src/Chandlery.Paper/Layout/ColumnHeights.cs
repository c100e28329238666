using Chandlery.Paper.Blocks;
using Chandlery.Paper.Symbols;

namespace Chandlery.Paper.Layout;

/// <summary>How high stretches of blocks stand in a column of one width; what has been measured once is kept.</summary>
/// <param name="widthMm">Width, millimetres.</param>
/// <param name="blocks">The blocks.</param>
/// <param name="sizes">Text sizes.</param>
/// <param name="symbols">Drawings.</param>
internal sealed class ColumnHeights(double widthMm, IReadOnlyList<Block> blocks, LayoutSizes sizes, SymbolSheet symbols)
{
    // Columns that are meant to be as wide as each other are not to the last bit.
    private const double SameWidthMm = 1e-9;

    private readonly GrowingColumn alone = new(0, widthMm, sizes, symbols);

    // Of each block by itself; no number where it was not asked for.
    private readonly double[] single = Unknown(blocks.Count);

    // By the first block of each stretch: the column that it has grown to, and how high it was after each block.
    private readonly Dictionary<int, (GrowingColumn Column, List<double> HeightsMm)> grown = [];

    /// <summary>The widths at which the columns of a row are measured, millimetres: those that are as good as one are the narrowest of them.</summary>
    /// <param name="edges">Left and right edge of each column, millimetres.</param>
    public static double[] Widths(IReadOnlyList<(double Left, double Right)> edges)
    {
        double[] own = [.. edges.Select(e => e.Right - e.Left)];
        return [.. own.Select(w => own.Where(o => Math.Abs(o - w) <= SameWidthMm).Min())];
    }

    /// <summary>The heights of each column of a row; those of one width share theirs.</summary>
    /// <param name="widthsMm">Width of each column, as <see cref="Widths"/> gives them.</param>
    /// <param name="blocks">The blocks.</param>
    /// <param name="sizes">Text sizes.</param>
    /// <param name="symbols">Drawings.</param>
    public static ColumnHeights[] ForEach(double[] widthsMm, IReadOnlyList<Block> blocks, LayoutSizes sizes, SymbolSheet symbols)
    {
        var heights = new ColumnHeights[widthsMm.Length];
        for (int i = 0; i < heights.Length; i++)
        {
            int same = Array.IndexOf(widthsMm, widthsMm[i]);
            heights[i] = same < i ? heights[same] : new ColumnHeights(widthsMm[i], blocks, sizes, symbols);
        }

        return heights;
    }

    /// <summary>
    /// Height of a stretch of blocks, millimetres; infinite when something is too wide. Blocks stand below each other and know
    /// nothing of their neighbours, except that text flows beside pictograms.
    /// </summary>
    /// <param name="first">Number of the first block.</param>
    /// <param name="end">Number behind the last block.</param>
    public double Of(int first, int end)
    {
        double height = 0;
        for (int i = first; i < end; i++)
        {
            if (blocks[i] is Pictograms)
            {
                return Grown(first, end);
            }

            if (double.IsNaN(single[i]))
            {
                single[i] = alone.HeightOfOnly(blocks[i]);
            }

            height += single[i];
        }

        return height;
    }

    private static double[] Unknown(int count)
    {
        var heights = new double[count];
        Array.Fill(heights, double.NaN);
        return heights;
    }

    private double Grown(int first, int end)
    {
        if (!grown.TryGetValue(first, out (GrowingColumn Column, List<double> HeightsMm) stretch))
        {
            grown[first] = stretch = (new GrowingColumn(0, widthMm, sizes, symbols), []);
        }

        for (int i = first + stretch.HeightsMm.Count; i < end; i++)
        {
            stretch.Column.Add(blocks[i]);
            stretch.HeightsMm.Add(stretch.Column.HeightMm);
        }

        return stretch.HeightsMm[end - first - 1];
    }
}

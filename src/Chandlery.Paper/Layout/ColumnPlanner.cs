using Chandlery.Paper.Blocks;
using Chandlery.Paper.Symbols;

namespace Chandlery.Paper.Layout;

/// <summary>
/// Deals blocks out to columns in a rectangle: in their order, nothing torn from what leads up to it, and so that the columns are
/// as even as can be.
/// </summary>
internal sealed class ColumnPlanner
{
    // A column that begins in the middle of a text is worth as much unevenness as a third of a column's height.
    private const double TornPenalty = 0.11;

    private readonly IReadOnlyList<Block> blocks;
    private readonly IReadOnlyList<int> starts;
    private readonly double roomMm;
    private readonly SymbolSheet symbols;
    private readonly double[] widths;

    // Where each column ends in the way that is being tried, and how full it is.
    private readonly int[] ends;
    private readonly double[] filled;
    private ColumnHeights[] heights = [];
    private ColumnPlan? best;

    /// <summary>Plans nothing yet.</summary>
    /// <param name="blocks">The blocks.</param>
    /// <param name="starts">Where columns may begin, as <see cref="StartsOf"/> gives them.</param>
    /// <param name="roomMm">Height of all columns, millimetres.</param>
    /// <param name="edges">Left and right edge of each column, millimetres.</param>
    /// <param name="symbols">Drawings.</param>
    public ColumnPlanner(
        IReadOnlyList<Block> blocks,
        IReadOnlyList<int> starts,
        double roomMm,
        IReadOnlyList<(double Left, double Right)> edges,
        SymbolSheet symbols
    )
    {
        this.blocks = blocks;
        this.starts = starts;
        this.roomMm = roomMm;
        this.symbols = symbols;
        Edges = edges;
        widths = ColumnHeights.Widths(edges);
        ends = new int[edges.Count];
        filled = new double[edges.Count];
    }

    /// <summary>Left and right edge of each column, millimetres.</summary>
    public IReadOnlyList<(double Left, double Right)> Edges { get; }

    /// <summary>Numbers of the blocks at which a column may begin, and behind the last one; the same for all columns and sizes.</summary>
    public static IReadOnlyList<int> StartsOf(IReadOnlyList<Block> blocks) =>
        [.. Enumerable.Range(1, blocks.Count - 1).Where(b => !blocks[b - 1].LeadsUp && blocks[b] is not (Gap or Push)), blocks.Count];

    /// <summary>The most even way at a size; null when the blocks do not fit.</summary>
    /// <param name="sizes">Text sizes.</param>
    public ColumnPlan? Plan(LayoutSizes sizes)
    {
        best = null;
        heights = ColumnHeights.ForEach(widths, blocks, sizes, symbols);
        Try(0, 0);
        return best;
    }

    /// <summary>Places what was planned.</summary>
    public static LayoutResult Place(
        IReadOnlyList<Block> blocks,
        ColumnPlan plan,
        (double Top, double Bottom) room,
        LayoutSizes sizes,
        SymbolSheet symbols
    )
    {
        List<LayoutResult> parts =
        [
            .. plan.Columns.Select(c =>
                FlowLayout.LayLoosely(
                    [.. blocks.Skip(c.First).Take(c.End - c.First)],
                    () => Region.Rectangle(c.Left, room.Top, c.Right, room.Bottom),
                    sizes,
                    symbols
                )
            ),
        ];
        return new LayoutResult(
            [.. parts.SelectMany(p => p.Items)],
            [.. parts.SelectMany(p => p.Marks)],
            parts.Max(p => p.EndMm),
            parts.Max(p => p.OverflowMm)
        );
    }

    private void Try(int column, int first)
    {
        bool isLast = column == widths.Length - 1;
        for (int s = isLast ? starts.Count - 1 : 0; s < (isLast ? starts.Count : starts.Count - 1); s++)
        {
            int end = starts[s];
            if (end <= first)
            {
                continue;
            }

            double height = heights[column].Of(first, end);
            if (height > roomMm)
            {
                // The column only grows with more blocks in it.
                return;
            }

            ends[column] = end;
            filled[column] = height / roomMm;
            if (isLast)
            {
                Keep();
            }
            else
            {
                Try(column + 1, end);
            }
        }
    }

    private void Keep()
    {
        double mean = filled.Average();
        double spread = 0;
        foreach (double part in filled)
        {
            spread += (part - mean) * (part - mean);
        }

        int torn = ends.SkipLast(1).Count(end => blocks[end] is not ColumnStart);
        double unevenness = (spread / filled.Length) + (torn * TornPenalty);
        if (best is null || unevenness < best.Unevenness)
        {
            best = new ColumnPlan(
                [.. Edges.Select((e, i) => new Column(e.Left, e.Right, i == 0 ? 0 : ends[i - 1], ends[i]))],
                unevenness,
                torn
            );
        }
    }
}

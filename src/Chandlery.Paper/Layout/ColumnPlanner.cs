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
    private readonly double top;
    private readonly double bottom;
    private readonly IReadOnlyList<(double Left, double Right)> edges;
    private readonly List<int> starts;
    private readonly ColumnHeights[] heights;

    // Where each column ends in the way that is being tried, and how full it is.
    private readonly int[] ends;
    private readonly double[] filled;
    private ColumnPlan? best;

    private ColumnPlanner(
        IReadOnlyList<Block> blocks,
        (double Top, double Bottom) room,
        IReadOnlyList<(double Left, double Right)> edges,
        LayoutSizes sizes,
        SymbolSheet symbols
    )
    {
        this.blocks = blocks;
        (top, bottom) = room;
        this.edges = edges;
        starts = [.. Enumerable.Range(1, blocks.Count - 1).Where(MayBegin), blocks.Count];
        heights = ColumnHeights.ForEach(edges, blocks, sizes, symbols);
        ends = new int[edges.Count];
        filled = new double[edges.Count];
    }

    /// <summary>The most even way; null when the blocks do not fit.</summary>
    /// <param name="blocks">The blocks.</param>
    /// <param name="room">Upper and lower edge of all columns, millimetres.</param>
    /// <param name="edges">Left and right edge of each column, millimetres.</param>
    /// <param name="sizes">Text sizes.</param>
    /// <param name="symbols">Drawings.</param>
    public static ColumnPlan? Plan(
        IReadOnlyList<Block> blocks,
        (double Top, double Bottom) room,
        IReadOnlyList<(double Left, double Right)> edges,
        LayoutSizes sizes,
        SymbolSheet symbols
    )
    {
        var planner = new ColumnPlanner(blocks, room, edges, sizes, symbols);
        planner.Try(0, 0);
        return planner.best;
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

    private bool MayBegin(int block) => !blocks[block - 1].LeadsUp && blocks[block] is not (Gap or Push);

    private void Try(int column, int first)
    {
        bool isLast = column == edges.Count - 1;
        for (int s = isLast ? starts.Count - 1 : 0; s < (isLast ? starts.Count : starts.Count - 1); s++)
        {
            int end = starts[s];
            if (end <= first)
            {
                continue;
            }

            double height = heights[column].Of(first, end);
            if (height > bottom - top)
            {
                // The column only grows with more blocks in it.
                return;
            }

            ends[column] = end;
            filled[column] = height / (bottom - top);
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
                [.. edges.Select((e, i) => new Column(e.Left, e.Right, i == 0 ? 0 : ends[i - 1], ends[i]))],
                unevenness,
                torn
            );
        }
    }
}

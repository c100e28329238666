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
    private readonly SymbolSheet symbols;
    private readonly double top;
    private readonly double bottom;
    private readonly IReadOnlyList<(double Left, double Right)> edges;
    private readonly LayoutSizes sizes;
    private readonly List<int> starts;
    private readonly Dictionary<(double Width, int First, int End), double> heights = [];
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
        this.sizes = sizes;
        this.symbols = symbols;
        starts = [.. Enumerable.Range(1, blocks.Count - 1).Where(MayBegin), blocks.Count];
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
        planner.Try([], 0, []);
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

    private void Try(List<Column> columns, int first, List<double> filled)
    {
        (double left, double right) = edges[columns.Count];
        bool isLast = columns.Count == edges.Count - 1;
        foreach (int end in starts.Where(s => s > first && (isLast ? s == blocks.Count : s < blocks.Count)))
        {
            double height = HeightOf(right - left, first, end);
            if (height > bottom - top)
            {
                // The column only grows with more blocks in it.
                return;
            }

            columns.Add(new Column(left, right, first, end));
            filled.Add(height / (bottom - top));
            if (isLast)
            {
                Keep(columns, filled);
            }
            else
            {
                Try(columns, end, filled);
            }

            columns.RemoveAt(columns.Count - 1);
            filled.RemoveAt(filled.Count - 1);
        }
    }

    private void Keep(List<Column> columns, List<double> filled)
    {
        double mean = filled.Average();
        double spread = filled.Average(f => (f - mean) * (f - mean));
        int torn = columns.Skip(1).Count(c => blocks[c.First] is not ColumnStart);
        double unevenness = spread + (torn * TornPenalty);
        if (best is null || unevenness < best.Unevenness)
        {
            best = new ColumnPlan([.. columns], unevenness, torn);
        }
    }

    // Blocks stand below each other and know nothing of their neighbours, except that text flows beside pictograms.
    private double HeightOf(double width, int first, int end)
    {
        for (int i = first; i < end; i++)
        {
            if (blocks[i] is Pictograms)
            {
                return Measured(width, first, end);
            }
        }

        double height = 0;
        for (int i = first; i < end; i++)
        {
            height += Measured(width, i, i + 1);
        }

        return height;
    }

    private double Measured(double width, int first, int end)
    {
        if (heights.TryGetValue((width, first, end), out double known))
        {
            return known;
        }

        LayoutResult measured = FlowLayout.Measure(
            [.. blocks.Skip(first).Take(end - first)],
            Region.Rectangle(0, 0, width, double.PositiveInfinity),
            sizes,
            symbols
        );
        double height = measured.OverflowMm > 0 ? double.PositiveInfinity : measured.EndMm;
        return heights[(width, first, end)] = height;
    }
}

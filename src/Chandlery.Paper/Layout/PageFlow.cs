using Chandlery.Paper.Blocks;
using Chandlery.Paper.Markup;
using Chandlery.Paper.Scenes;
using Chandlery.Paper.Symbols;

namespace Chandlery.Paper.Layout;

/// <summary>Flows blocks over as many pages as they need.</summary>
internal static class PageFlow
{
    // Less on a page would look as if something had been forgotten there.
    private const double LeastLeft = 0.5;

    /// <summary>The pages, and how full the last one is.</summary>
    /// <param name="document">Blocks with page size and margin.</param>
    /// <param name="sizes">Text sizes.</param>
    /// <param name="symbols">Drawings.</param>
    /// <param name="frame">Head and foot of a page: blocks for page number and count, set in the upper and lower margin.</param>
    public static PagedLayout Lay(
        MarkupDocument document,
        LayoutSizes sizes,
        SymbolSheet symbols,
        Func<int, int, (IReadOnlyList<Block> Head, IReadOnlyList<Block> Foot)> frame
    )
    {
        double margin = document.MarginMm;
        double left = margin + document.InsetMm;
        double top = margin + 6;
        double bottom = document.HeightMm - margin - 6;
        var pages = new List<List<Block>> { new() };
        GrowingColumn column = Column([]);
        foreach (Block block in Split(document.Blocks))
        {
            List<Block> page = pages[^1];
            column.Add(block);
            if (page.Count > 0 && column.EndMm > bottom - top)
            {
                // Headings, and what only leads up to them, are not left alone at the foot of a page.
                int kept = LeadingUpTo(block, page) ?? page.Count;
                while (kept > 1 && page[kept - 1] is Paragraph { Size: > 1 } or Gap or Rule or Table { Rows: [{ IsHeading: true }] })
                {
                    kept--;
                }

                bool headed = page.Skip(kept).Any(b => b is not Gap);
                List<Block> moved = headed ? [.. page.Skip(kept).SkipWhile(b => b is Gap)] : [];
                if (headed)
                {
                    page.RemoveRange(kept, page.Count - kept);
                }

                pages.Add(moved);
                if (
                    !headed
                    && block is Table rows
                    && rows.Rows is [{ IsHeading: false }, ..]
                    && HeadingOf(document.Blocks, rows) is { } repeated
                )
                {
                    pages[^1].Add(rows with { Rows = [repeated] });
                }

                column = Column([.. pages[^1], block]);
            }

            pages[^1].Add(block);
        }

        return new PagedLayout([.. pages.Select((page, i) => Draw(page, i + 1))], column.EndMm / (bottom - top));

        // A drawing takes its section along, where that leaves the page at least half full.
        int? LeadingUpTo(Block block, List<Block> page) =>
            block is Depiction
            && page.FindLastIndex(b => b is Paragraph { Size: > 1 }) is > 0 and var heading
            && Height([.. page.Skip(heading), block]) <= bottom - top
            && Height([.. page.Take(heading)]) >= LeastLeft * (bottom - top)
                ? heading
                : null;

        double Height(List<Block> blocks) => Column(blocks).EndMm;

        GrowingColumn Column(List<Block> blocks)
        {
            var growing = new GrowingColumn(left, document.WidthMm - margin, sizes, symbols);
            blocks.ForEach(growing.Add);
            return growing;
        }

        Scene Draw(List<Block> page, int number)
        {
            Region Band(double from, double to, double at) => Region.Rectangle(at, from, document.WidthMm - margin, to);
            (IReadOnlyList<Block> head, IReadOnlyList<Block> foot) = frame(number, pages.Count);
            LayoutResult[] parts =
            [
                FlowLayout.Lay(head, Band(margin - 6, top, margin), sizes, symbols),
                FlowLayout.Lay(page, Band(top, bottom, left), sizes, symbols),
                FlowLayout.Lay(foot, Band(bottom + 2, document.HeightMm, margin), sizes, symbols),
            ];
            return new Scene(document.WidthMm, document.HeightMm, [.. parts.SelectMany(p => p.Items)], [.. parts.SelectMany(p => p.Marks)]);
        }
    }

    // Tables break between rows.
    private static IEnumerable<Block> Split(IReadOnlyList<Block> blocks) =>
        blocks.SelectMany(b => b is Table table ? table.Rows.Select(r => (Block)(table with { Rows = [r] })) : [b]);

    private static TableRow? HeadingOf(IReadOnlyList<Block> blocks, Table part) =>
        blocks.OfType<Table>().FirstOrDefault(t => t.Rows.Contains(part.Rows[0]))?.Rows.FirstOrDefault(r => r.IsHeading);
}

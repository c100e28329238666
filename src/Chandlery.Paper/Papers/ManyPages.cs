using Chandlery.Paper.Blocks;
using Chandlery.Paper.Layout;
using Chandlery.Paper.Markup;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers;

/// <summary>Lays documents of several pages, each with a foot that counts them.</summary>
public static class ManyPages
{
    private const double LineSpacing = 1.3;
    private const double PictogramMm = 16;
    private const double StepMm = 0.02;
    private const double FrameSize = 0.9;
    private const double HeadLineMm = 0.2;

    // A last page with less on it looks forgotten: then the text is tried a little smaller, down to the document's smallest.
    private const double LeastOfLastPage = 0.3;

    /// <summary>The document that a markup text describes; null with problems.</summary>
    public static PaperDocument? FromMarkup(string markup, string name, PaperShop shop, Problems problems) =>
        MarkupReader.Read(markup, name, problems) is { } document
            ? Lay(document, shop, (_, _) => [], (page, count) => [Line("", $"{page} / {count}")])
            : null;

    /// <summary>Lays a document.</summary>
    /// <param name="document">Its blocks and page size.</param>
    /// <param name="shop">Drawings.</param>
    /// <param name="head">Blocks at the head of a page, by page number and count.</param>
    /// <param name="foot">Blocks at the foot, by page number and count.</param>
    internal static PaperDocument Lay(
        MarkupDocument document,
        PaperShop shop,
        Func<int, int, IReadOnlyList<Block>> head,
        Func<int, int, IReadOnlyList<Block>> foot
    )
    {
        PagedLayout? best = null;
        for (double xHeight = document.XHeightMm; xHeight >= document.SmallestXHeightMm - 1e-9; xHeight -= StepMm)
        {
            var sizes = new LayoutSizes(xHeight, LineSpacing, PictogramMm) { InsetMm = document.InsetMm };
            PagedLayout tried = PageFlow.Lay(document, sizes, shop.Symbols, (page, count) => (head(page, count), foot(page, count)));
            if (best is null || tried.Pages.Count < best.Pages.Count)
            {
                best = tried;
            }

            if (tried.Pages.Count == 1 || tried.LastFilled >= LeastOfLastPage || document.SmallestXHeightMm == 0)
            {
                break;
            }
        }

        return new PaperDocument(document.Title, document.Language, best!.Pages);
    }

    /// <summary>The head of a page: what it is of and what it is, above a line.</summary>
    /// <param name="left">What stands at the left.</param>
    /// <param name="right">What stands at the right.</param>
    internal static IReadOnlyList<Block> Head(string left, string right) => [Line(left, right), new Rule(HeadLineMm, Ink.Black)];

    /// <summary>A line of the head or foot of a page.</summary>
    /// <param name="left">What stands at the left; empty for nothing.</param>
    /// <param name="right">What stands at the right.</param>
    internal static Block Line(string left, string right) =>
        left.Length == 0
            ? new Paragraph([new Span(right, Fonts.Weight.Regular)], FrameSize, 0, Align.Right)
            : new Ends([new Span(left, Fonts.Weight.Bold)], [new Span(right, Fonts.Weight.Regular)], FrameSize);
}

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

    /// <summary>The document that a markup text describes; null with problems.</summary>
    public static PaperDocument? FromMarkup(string markup, string name, PaperShop shop, Problems problems) =>
        MarkupReader.Read(markup, name, problems) is { } document
            ? Lay(document, shop, (_, _) => [], (page, count) => $"{page} / {count}")
            : null;

    /// <summary>Lays a document.</summary>
    /// <param name="document">Its blocks and page size.</param>
    /// <param name="shop">Drawings.</param>
    /// <param name="head">Blocks at the head of a page, by page number and count.</param>
    /// <param name="foot">Text at the foot, from page number and count.</param>
    internal static PaperDocument Lay(
        MarkupDocument document,
        PaperShop shop,
        Func<int, int, IReadOnlyList<Block>> head,
        Func<int, int, string> foot
    ) =>
        new(
            document.Title,
            document.Language,
            PageFlow.Lay(
                document,
                new LayoutSizes(document.XHeightMm, LineSpacing, PictogramMm),
                shop.Symbols,
                (page, count) =>
                    (head(page, count), [new Paragraph([new Span(foot(page, count), Fonts.Weight.Regular)], 0.9, 0, Align.Right)])
            )
        );
}

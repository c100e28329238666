namespace Chandlery.Intake.Pages;

/// <summary>
/// Puts the lines of all pages into the order in which people read them: pages with two columns of text give their left column first.
/// </summary>
internal static partial class ReadingOrder
{
    private const double StepMm = 1;
    private const double SameEdgeMm = 2.5;
    private const double RiverMm = 2;
    private const double LinesAround = 2.2;
    private const double MostCrossing = 0.25;
    private const double LineOfTypeSize = 1.3;
    private const int FewestHeadingsBeside = 2;

    /// <summary>The lines of all pages.</summary>
    /// <param name="pages">The pages.</param>
    /// <param name="isSectionHeading">Tells headings of sections: one that stands on the right tells two columns of text from a table.</param>
    public static IReadOnlyList<TextLine> Of(IReadOnlyList<SheetPage> pages, Func<TextLine, bool> isSectionHeading)
    {
        double? edge = RightEdge(pages, isSectionHeading);
        return [.. pages.SelectMany(p => edge is { } e && IsInTwo(p, e) ? InTwo(p, e) : TextLine.Of(p.Number, p.Words))];
    }

    /// <summary>Pages without heads and feet that repeat from page to page.</summary>
    /// <param name="pages">The pages.</param>
    /// <param name="isOfTable">Tells headings and rows of tables, which may repeat at the same height but belong to the table.</param>
    public static IReadOnlyList<SheetPage> WithoutFrames(IReadOnlyList<SheetPage> pages, Func<TextLine, bool> isOfTable)
    {
        List<(SheetPage Page, TextLine Line)> all = [.. pages.SelectMany(p => TextLine.Of(p.Number, p.Words).Select(l => (p, l)))];
        static bool InMargin(SheetPage page, TextLine line) =>
            line.Box.Bottom < 0.13 * page.HeightMm || line.Box.Top > 0.87 * page.HeightMm;
        HashSet<Word> frames =
        [
            .. all.Where(a => InMargin(a.Page, a.Line) && !isOfTable(a.Line))
                .GroupBy(a => (a.Line.Shape, (int)Math.Round(a.Line.Box.Bottom / 2)))
                .Where(g =>
                    g.Select(a => a.Line.Page).Distinct().Count() >= Math.Max(2, pages.Count * 0.5)
                    && CountsPages([.. g.Select(a => a.Line)])
                )
                .SelectMany(g => g.SelectMany(a => a.Line.Words)),
            .. all.Where(a => InMargin(a.Page, a.Line) && PageNumber().IsMatch(a.Line.Text) && StandsAlone(a.Line, all))
                .SelectMany(a => a.Line.Words),
        ];
        return [.. pages.Select(p => p with { Words = [.. p.Words.Where(w => !frames.Contains(w))] })];
    }

    [System.Text.RegularExpressions.GeneratedRegex(@"^[0-9]{1,3}(?:\s?/\s?[0-9]{1,3})?$")]
    private static partial System.Text.RegularExpressions.Regex PageNumber();

    // What changes from page to page in a head or foot is the page's number; numbers of substances and shares change otherwise.
    private static bool CountsPages(List<TextLine> lines)
    {
        List<(int Page, List<string> Figures)> all =
        [
            .. lines.Select(l => (l.Page, Figures().Matches(l.Text).Select(m => m.Value).ToList())),
        ];
        return Enumerable
            .Range(0, all[0].Figures.Count)
            .All(at =>
                all.All(l => l.Figures[at] == all[0].Figures[at])
                || all.All(l =>
                    int.TryParse(l.Figures[at], out int n)
                    && int.TryParse(all[0].Figures[at], out int first)
                    && n - l.Page == first - all[0].Page
                )
            );
    }

    [System.Text.RegularExpressions.GeneratedRegex(@"[0-9]+")]
    private static partial System.Text.RegularExpressions.Regex Figures();

    // Nothing else stands within two lines of it.
    private static bool StandsAlone(TextLine line, List<(SheetPage Page, TextLine Line)> all) =>
        !all.Any(a =>
            a.Line != line
            && a.Page.Number == line.Page
            && Math.Abs(a.Line.Box.Bottom - line.Box.Bottom) < LinesAround * line.Words[0].TypeSize
        );

    // Where the right column of text begins: where headings of sections stand right of the middle of the page's text.
    private static double? RightEdge(IReadOnlyList<SheetPage> pages, Func<TextLine, bool> isSectionHeading)
    {
        List<double> edges = [];
        foreach (SheetPage page in pages)
        {
            foreach (TextLine line in TextLine.Of(page.Number, page.Words))
            {
                edges.AddRange(
                    line.Words.Where(w => w.Box.Left > 0.4 * page.WidthMm && w.Box.Left < 0.66 * page.WidthMm)
                        .Where(w => isSectionHeading(line.Only([.. line.Words.SkipWhile(x => x != w)])))
                        .Select(w => w.Box.Left)
                );
            }
        }

        edges = edges.Count > 0 ? edges : [.. pages.SelectMany(p => BesideHeadings(p, isSectionHeading))];
        return edges.Count == 0 ? null : edges.GroupBy(e => Math.Round(e / SameEdgeMm)).MaxBy(g => g.Count())!.Min();
    }

    // Where text begins right beside headings of sections, which stand alone on a page with one column of text.
    private static IEnumerable<double> BesideHeadings(SheetPage page, Func<TextLine, bool> isSectionHeading)
    {
        var edges = new List<double>();
        foreach (TextLine heading in TextLine.Of(page.Number, page.Words).Select(l => l.Phrases()[0]).Where(isSectionHeading))
        {
            IEnumerable<Word> beside = page.Words.Where(w =>
                w.Box.Left > Math.Max(heading.Frame.Right, 0.4 * page.WidthMm)
                && w.Box.Left < 0.66 * page.WidthMm
                && Math.Abs(w.Box.CentreY - heading.Frame.CentreY) < LineOfTypeSize * w.TypeSize
            );
            edges.AddRange(beside.Select(w => w.Box.Left).Order().Take(1));
        }

        return edges.Count >= FewestHeadingsBeside ? edges : [];
    }

    // Lines that cross the river are few, and those on its right begin at its edge.
    private static bool IsInTwo(SheetPage page, double edge)
    {
        IReadOnlyList<TextLine> lines = TextLine.Of(page.Number, page.Words);
        int crossing = lines.Count(l => Crosses(l, edge));
        int atEdge = lines.Count(l => l.Words.Any(w => Math.Abs(w.Box.Left - edge) < StepMm));
        int right = lines.Count(l => l.Words.Any(w => w.Box.Left > edge - StepMm));
        return lines.Count > 0 && right > 0 && crossing < MostCrossing * lines.Count && atEdge > 0.3 * right;
    }

    private static bool Crosses(TextLine line, double edge) =>
        line.Words.Any(w => w.Box.Left < edge - RiverMm && w.Box.Right > edge - RiverMm);

    private static IEnumerable<TextLine> InTwo(SheetPage page, double edge)
    {
        IReadOnlyList<TextLine> lines = TextLine.Of(page.Number, page.Words);
        double left = page.Words.Count == 0 ? 0 : page.Words.Min(w => w.Box.Left);
        double shift = edge - left;
        var band = new List<Word>();
        foreach (TextLine line in lines)
        {
            if (!Crosses(line, edge))
            {
                band.AddRange(line.Words);
                continue;
            }

            foreach (TextLine one in Band(page, band, edge, shift))
            {
                yield return one;
            }

            band.Clear();
            yield return line;
        }

        foreach (TextLine one in Band(page, band, edge, shift))
        {
            yield return one;
        }
    }

    private static IEnumerable<TextLine> Band(SheetPage page, List<Word> words, double edge, double shift)
    {
        IEnumerable<Word> right = words
            .Where(w => w.Box.Left >= edge - RiverMm)
            .Select(w => w with { Box = w.Box with { Left = w.Box.Left - shift, Right = w.Box.Right - shift } });
        return TextLine.Of(page.Number, words.Where(w => w.Box.Left < edge - RiverMm)).Concat(TextLine.Of(page.Number, right, shift));
    }
}

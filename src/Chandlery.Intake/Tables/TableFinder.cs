using Chandlery.Intake.Pages;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Tables;

/// <summary>Rebuilds an ingredient table from lines of text.</summary>
/// <param name="wording">Headings of columns.</param>
internal sealed class TableFinder(SheetWording wording)
{
    private const double HeadingLineMm = 7;
    private const double TallestHeadingMm = 30;
    private const int LongestWrappedHeading = 40;

    /// <summary>The table among these lines; null when no line heads one.</summary>
    /// <param name="lines">Lines of a section, from top to bottom over all its pages.</param>
    /// <param name="pages">The pages, for ruled lines.</param>
    public Table? Find(IReadOnlyList<TextLine> lines, IReadOnlyList<SheetPage> pages)
    {
        int first = Enumerable.Range(0, lines.Count).FirstOrDefault(i => ColumnKind.IsTableHeading(lines[i], wording), -1);
        if (first < 0)
        {
            return null;
        }

        (int from, int to) = HeadingExtent(lines, first, pages);
        List<TextLine> heading = [.. lines.Skip(from).Take(to - from + 1)];
        HashSet<string> headingTexts = [.. heading.Select(l => l.Text)];
        List<TextLine> body =
        [
            .. lines
                .Skip(to + 1)
                .TakeWhile(l => !IsEnd(l))
                .Where(l => !headingTexts.Contains(l.Text) && !ColumnKind.IsTableHeading(l, wording)),
        ];
        if (body.Count == 0)
        {
            return null;
        }

        List<TextLine> all = [.. heading, .. body];
        List<RuledLine> rules = [.. RulesOf(all, pages)];
        IReadOnlyList<double> separators = ColumnFinder.Ruled(all, rules);
        bool ruled = separators.Count > 0;
        separators = ruled ? separators : ColumnFinder.Gaps(all);
        List<TextLine> clusters = ruled ? Clusters(heading, separators) : [.. Clusters(heading).SelectMany(c => Parted(c, separators))];
        while (body.Count > 1 && IsProse(body[^1], separators))
        {
            body.RemoveAt(body.Count - 1);
        }

        (List<Column> columns, int[] columnOfStrip) = Columns(clusters, separators);
        Column? share = columns.FirstOrDefault(c => c.Kinds.Contains(ColumnKind.Share));
        var rowFinder = new RowFinder(share is null ? -1 : columns.IndexOf(share), wording);
        return new Table(columns, rowFinder.Find(body, l => Split(l, separators, columnOfStrip, columns.Count), rules));
    }

    // A sentence under the table runs across its columns without a gap.
    private static bool IsProse(TextLine line, IReadOnlyList<double> separators) =>
        line.Phrases() is [var only] && separators.Any(s => s > only.Box.Left && s < only.Box.Right) && !ColumnKind.HasData(only.Text);

    private bool IsEnd(TextLine line) =>
        line.Text.Length > 12 && Phrase.AnyIn(wording.Lists["tableEnds"], line.Text) && !ColumnKind.HasData(line.Text[..12]);

    // A heading's cells may wrap over several lines, above and below the line that was recognised. Ruled lines around it
    // decide; without them, lines close by that say nothing but headings belong to it.
    private (int From, int To) HeadingExtent(IReadOnlyList<TextLine> lines, int first, IReadOnlyList<SheetPage> pages)
    {
        (double top, double bottom) = RulesAround(lines[first], pages);
        bool ruled = bottom - top < TallestHeadingMm;
        bool Belongs(TextLine line, TextLine next) =>
            line.Page == lines[first].Page && (ruled ? line.Box.CentreY > top && line.Box.CentreY < bottom : IsNear(line, next));
        List<TextLine> heading = [lines[first]];
        int from = first;
        while (from > 0 && Belongs(lines[from - 1], lines[from]) && IsHeadingLine(lines[from - 1], heading))
        {
            heading.Add(lines[--from]);
        }

        int to = first;
        while (to + 1 < lines.Count && Belongs(lines[to + 1], lines[to]) && IsHeadingLine(lines[to + 1], heading))
        {
            heading.Add(lines[++to]);
        }

        return (from, to);
    }

    // The nearest level lines above and below; NaN where there is none.
    private static (double Top, double Bottom) RulesAround(TextLine line, IReadOnlyList<SheetPage> pages)
    {
        List<double> level =
        [
            .. pages
                .First(p => p.Number == line.Page)
                .Rules.Where(r => r.IsLevel && r.Box.Left < line.Box.Right && r.Box.Right > line.Box.Left)
                .Select(r => r.Box.CentreY),
        ];
        return (
            level.Where(y => y < line.Box.CentreY).DefaultIfEmpty(double.NaN).Max(),
            level.Where(y => y > line.Box.CentreY).DefaultIfEmpty(double.NaN).Min()
        );
    }

    private static bool IsNear(TextLine above, TextLine below) =>
        above.Page == below.Page && below.Box.Bottom - above.Box.Bottom < HeadingLineMm;

    // A name alone under the first heading is a row, not a heading.
    private bool IsHeadingLine(TextLine line, IReadOnlyList<TextLine> heading)
    {
        if (ColumnKind.HasData(line.Text))
        {
            return false;
        }

        List<TextLine> known = [.. heading.SelectMany(h => h.Phrases()).OrderBy(p => p.Box.Left)];
        return line.Phrases()
            .All(p =>
                (
                    ColumnKind.Of(p.Text, wording).Count > 0
                    && (line.Phrases().Count > 1 || p.Box.Left > known[0].Box.Right || p.Box.Right < known[0].Box.Left)
                ) || (p.Text.Length < LongestWrappedHeading && known.Skip(1).Any(k => k.Box.Left < p.Box.Right && p.Box.Left < k.Box.Right))
            );
    }

    // Heading cells between ruled lines.
    private static List<TextLine> Clusters(IReadOnlyList<TextLine> heading, IReadOnlyList<double> separators) =>
        [
            .. heading
                .SelectMany(l => l.Words.Select(w => (l.Page, Word: w)))
                .GroupBy(w => separators.Count(s => s < w.Word.Box.CentreX))
                .OrderBy(g => g.Key)
                .Select(g => new TextLine(g.First().Page, [.. g.Select(w => w.Word)])),
        ];

    // Heading cells: phrases under each other belong together.
    private static List<TextLine> Clusters(IReadOnlyList<TextLine> heading)
    {
        var clusters = new List<List<TextLine>>();
        foreach (TextLine phrase in heading.SelectMany(l => l.Phrases()).OrderBy(p => p.Box.Bottom))
        {
            List<TextLine>? home = clusters.FirstOrDefault(c =>
                c.Any(p =>
                    Math.Abs(p.Box.Bottom - phrase.Box.Bottom) > 0.5
                    && Math.Min(p.Box.Right, phrase.Box.Right) > Math.Max(p.Box.Left, phrase.Box.Left)
                )
            );
            if (home is null)
            {
                clusters.Add([phrase]);
            }
            else
            {
                home.Add(phrase);
            }
        }

        return [.. clusters.Select(c => new TextLine(c[0].Page, [.. c.SelectMany(p => p.Words)])).OrderBy(c => c.Box.CentreX)];
    }

    // Two headings that stand so close that they look like one phrase: each side of a gap names a column of its own.
    private IEnumerable<TextLine> Parted(TextLine cluster, IReadOnlyList<double> separators)
    {
        foreach (double at in separators.Where(s => s > cluster.Box.Left && s < cluster.Box.Right))
        {
            List<Word> left = [.. cluster.Words.Where(w => w.Box.CentreX < at)];
            List<Word> right = [.. cluster.Words.Where(w => w.Box.CentreX >= at)];
            if (left.Count == 0 || right.Count == 0)
            {
                continue;
            }

            var first = new TextLine(cluster.Page, left);
            var rest = new TextLine(cluster.Page, right);
            IReadOnlyList<string> kinds = ColumnKind.Of(first.Text, wording);
            IReadOnlyList<string> others = ColumnKind.Of(rest.Text, wording);
            if (kinds.Count > 0 && others.Count > 0 && !kinds.Intersect(others).Any())
            {
                return Parted(rest, separators).Prepend(first);
            }
        }

        return [cluster];
    }

    // Strips between separators go to the heading above them; a strip without one goes to its neighbour's.
    private (List<Column> Columns, int[] ColumnOfStrip) Columns(List<TextLine> clusters, IReadOnlyList<double> separators)
    {
        int strips = separators.Count + 1;
        var clusterOf = new int[strips];
        for (int s = 0; s < strips; s++)
        {
            double from = s == 0 ? double.NegativeInfinity : separators[s - 1];
            double to = s == strips - 1 ? double.PositiveInfinity : separators[s];
            clusterOf[s] = clusters.FindIndex(c => c.Box.CentreX >= from && c.Box.CentreX < to);
        }

        for (int s = 0; s < strips; s++)
        {
            if (clusterOf[s] < 0)
            {
                int left = Array.FindLastIndex(clusterOf, s, c => c >= 0);
                clusterOf[s] = left >= 0 ? clusterOf[left] : clusterOf[Array.FindIndex(clusterOf, s, c => c >= 0)];
            }
        }

        List<int> order = [.. clusterOf.Distinct()];
        List<Column> columns = [];
        foreach (int cluster in order)
        {
            // Two headings over one strip share its column.
            int strip = Array.IndexOf(clusterOf, cluster);
            double from = strip == 0 ? double.NegativeInfinity : separators[strip - 1];
            int last = Array.LastIndexOf(clusterOf, cluster);
            double to = last == strips - 1 ? double.PositiveInfinity : separators[last];
            string text = string.Join(' ', clusters.Where(c => c.Box.CentreX >= from && c.Box.CentreX < to).Select(c => c.Text));
            columns.Add(new Column(ColumnKind.Of(text.Replace("- ", "-", StringComparison.Ordinal), wording), text));
        }

        return (columns, [.. clusterOf.Select(c => order.IndexOf(c))]);
    }

    private static Cell[] Split(IReadOnlyList<TextLine> lines, IReadOnlyList<double> separators, int[] columnOfStrip, int columns)
    {
        var cells = new List<TextLine>[columns];
        for (int c = 0; c < columns; c++)
        {
            cells[c] = [];
        }

        foreach (TextLine line in lines)
        {
            foreach (IGrouping<int, Word> part in line.Words.GroupBy(w => columnOfStrip[separators.Count(s => s < w.Box.CentreX)]))
            {
                cells[part.Key].Add(new TextLine(line.Page, [.. part]));
            }
        }

        return [.. cells.Select(c => new Cell(c))];
    }

    private static IEnumerable<RuledLine> RulesOf(IReadOnlyList<TextLine> lines, IReadOnlyList<SheetPage> pages)
    {
        foreach (SheetPage page in pages)
        {
            List<TextLine> own = [.. lines.Where(l => l.Page == page.Number)];
            if (own.Count == 0)
            {
                continue;
            }

            double top = own.Min(l => l.Box.Top) - 4;
            double bottom = own.Max(l => l.Box.Bottom) + 4;
            foreach (RuledLine rule in page.Rules.Where(r => r.Box.Bottom > top && r.Box.Top < bottom))
            {
                yield return rule;
            }
        }
    }
}

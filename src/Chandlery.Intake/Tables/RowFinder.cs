using Chandlery.Intake.Pages;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Tables;

/// <summary>Finds where rows part: at level ruled lines where they part rows, else between shares, at the widest gap.</summary>
/// <param name="anchor">The column that has exactly one value in each row (the share); -1 when there is none.</param>
/// <param name="wording">How ranges are written.</param>
internal sealed class RowFinder(int anchor, SheetWording wording)
{
    private const double ClearlyWider = 1.2;
    private const double WidestSplitShareMm = 6;

    /// <summary>The rows of all pages.</summary>
    /// <param name="body">Lines of the table without its heading.</param>
    /// <param name="split">Splits lines into cells.</param>
    /// <param name="rules">Ruled lines; their places count from the top of each page.</param>
    public IReadOnlyList<Row> Find(
        IReadOnlyList<TextLine> body,
        Func<IReadOnlyList<TextLine>, Cell[]> split,
        IReadOnlyList<RuledLine> rules
    )
    {
        var rows = new List<Row>();
        foreach (IGrouping<int, TextLine> page in body.GroupBy(l => l.Page))
        {
            List<TextLine> lines = [.. page];
            List<Anchor> anchors = Anchors(lines, split);
            List<Band> bands =
                anchors.Count == 0 ? [new Band(lines, [])] : Bands(lines, anchors, rules.Where(r => r.Page == page.Key), rows.Count == 0);
            bool isFirst = true;
            foreach (Band band in bands.Where(b => b.Lines.Count > 0))
            {
                Cell[] cells = split(band.Lines);
                bool hasAnchor = anchors.Any(a => band.Lines.Contains(a.Lines[0]));
                bool isRow = hasAnchor || rows.Count == 0 || cells.Any(c => ColumnKind.HasCas(c.Text));
                if (isRow)
                {
                    rows.Add(new Row(page.Key, cells, hasAnchor ? band.Doubts : [.. band.Doubts, "the row has no share that can be read"]));
                }
                else if (isFirst)
                {
                    rows[^1] = Joined(rows[^1], cells);
                }
                else
                {
                    string text = string.Join(' ', band.Lines.Select(l => l.Text));
                    rows[^1] = rows[^1] with { Doubts = [.. rows[^1].Doubts, $"text below it was left out: '{text}'"] };
                }

                isFirst = false;
            }
        }

        return rows;
    }

    private static Row Joined(Row row, Cell[] more) =>
        row with
        {
            Cells = [.. row.Cells.Zip(more, (a, b) => new Cell([.. a.Lines, .. b.Lines]))],
            Doubts =
            [
                .. row.Doubts,
                .. more.Any(c => c.Lines.Any(l => l.Page != row.Page)) ? new[] { "the row goes on over a page break" } : [],
            ],
        };

    /// <summary>Where a share stands; a range may be wrapped over two lines.</summary>
    private sealed record Anchor(IReadOnlyList<TextLine> Lines);

    private sealed record Band(IReadOnlyList<TextLine> Lines, IReadOnlyList<string> Doubts);

    private List<Anchor> Anchors(List<TextLine> lines, Func<IReadOnlyList<TextLine>, Cell[]> split)
    {
        if (anchor < 0)
        {
            return [.. lines.Where(l => ColumnKind.HasData(l.Text)).Select(l => new Anchor([l]))];
        }

        var anchors = new List<Anchor>();
        foreach (TextLine line in lines)
        {
            string text = split([line])[anchor].Text;
            if (!text.Any(char.IsAsciiDigit) && !text.Any(c => c is '<' or '>' or '≤' or '≥'))
            {
                continue;
            }

            if (anchors.Count > 0 && IsRestOf(anchors[^1], line, split))
            {
                anchors[^1] = new Anchor([.. anchors[^1].Lines, line]);
            }
            else
            {
                anchors.Add(new Anchor([line]));
            }
        }

        return anchors;
    }

    private bool IsRestOf(Anchor before, TextLine line, Func<IReadOnlyList<TextLine>, Cell[]> split)
    {
        string Share(IReadOnlyList<TextLine> lines) => split(lines)[anchor].Text;
        bool near = before.Lines[^1].Page == line.Page && line.Box.Bottom - before.Lines[^1].Box.Bottom < WidestSplitShareMm;
        bool partial =
            !ShareText.Parse(Share(before.Lines), wording).Success
            || Share([line]).TrimStart() is ['<', ..] or ['≤', ..] or ['-', ..] or ['\u2013', ..];
        return near && partial && ShareText.Parse(Share([.. before.Lines, line]), wording).Success;
    }

    private static List<Band> Bands(List<TextLine> lines, List<Anchor> anchors, IEnumerable<RuledLine> rules, bool isFirstPage)
    {
        double left = lines.Min(l => l.Box.Left);
        double right = lines.Max(l => l.Box.Right);
        List<double> level =
        [
            .. rules
                .Where(r => r.IsLevel)
                .GroupBy(r => Math.Round(r.Box.CentreY * 2) / 2)
                .Where(g =>
                    g.Max(r => r.Box.Right) - g.Min(r => r.Box.Left) > 0.6 * (right - left)
                    && g.Sum(r => r.Box.Width) > 0.6 * (right - left)
                )
                .Select(g => g.Average(r => r.Box.CentreY))
                .Order(),
        ];
        List<Band> ruled = [.. lines.GroupBy(l => level.Count(y => y < l.Box.CentreY)).Select(g => new Band([.. g], []))];
        bool rulesPartRows = ruled.All(b => anchors.Count(a => b.Lines.Contains(a.Lines[0])) <= 1) && ruled.Count >= anchors.Count;
        return rulesPartRows ? ruled : BetweenAnchors(lines, anchors, isFirstPage);
    }

    private static List<Band> BetweenAnchors(List<TextLine> lines, List<Anchor> anchors, bool isFirstPage)
    {
        var starts = new List<int> { FirstRow(lines, anchors[0], isFirstPage) };
        var doubts = new List<List<string>> { new() };
        for (int k = 1; k < anchors.Count; k++)
        {
            int from = lines.IndexOf(anchors[k - 1].Lines[^1]);
            int to = lines.IndexOf(anchors[k].Lines[0]);
            List<(int At, double Gap)> gaps =
            [
                .. Enumerable.Range(from + 1, to - from).Select(i => (i, lines[i].Box.Bottom - lines[i - 1].Box.Bottom)),
            ];
            (int at, double widest) = gaps.MaxBy(g => g.Gap);
            double others = gaps.Where(g => g.At != at).Select(g => g.Gap).DefaultIfEmpty(0).Max();
            bool clear = gaps.Count == 1 || widest > ClearlyWider * others;
            starts.Add(clear ? at : to);
            doubts.Add(clear ? [] : ["nothing on the page parts this row from the one above; it was taken to start at its share"]);
        }

        var bands = new List<Band>();
        if (starts[0] > 0)
        {
            bands.Add(new Band([.. lines.Take(starts[0])], []));
        }

        for (int k = 0; k < starts.Count; k++)
        {
            int end = k + 1 < starts.Count ? starts[k + 1] : lines.Count;
            bool below = k + 1 < starts.Count && doubts[k + 1].Count > 0;
            List<string> own = below ? [.. doubts[k], "nothing on the page parts this row from the one below"] : doubts[k];
            bands.Add(new Band([.. lines.Skip(starts[k]).Take(end - starts[k])], own));
        }

        return bands;
    }

    // On the first page the table starts with a row; later pages may start with the rest of one, parted by a wider gap.
    private static int FirstRow(List<TextLine> lines, Anchor first, bool isFirstPage)
    {
        int to = lines.IndexOf(first.Lines[0]);
        if (isFirstPage || to == 0)
        {
            return 0;
        }

        (int at, double gap) = Enumerable.Range(1, to).Select(i => (i, lines[i].Box.Bottom - lines[i - 1].Box.Bottom)).MaxBy(g => g.Item2);
        double usual = Enumerable
            .Range(1, to)
            .Where(i => i != at)
            .Select(i => lines[i].Box.Bottom - lines[i - 1].Box.Bottom)
            .DefaultIfEmpty(gap / 1.3)
            .Max();
        return gap > ClearlyWider * usual ? at : 0;
    }
}

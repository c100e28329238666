using Chandlery.Intake.Pages;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Tables;

/// <summary>
/// Finds where rows part. There are several ways to part them (ruled lines, wider gaps, everything on a row's first line, the nearest
/// share); each is scored by how much its rows look like rows, and where equally good ways differ the rows are doubted.
/// </summary>
/// <param name="columns">The columns.</param>
/// <param name="wording">How shares are written.</param>
/// <param name="hazards">How classes are written.</param>
internal sealed class RowFinder(IReadOnlyList<Column> columns, SheetWording wording, HazardText hazards)
{
    private const double ClearlyWider = 1.2;
    private const double WidestPitch = 1.75;
    private const double WidestSplitShareMm = 6;
    private const double SameScore = 0.01;
    private const double NearScoreOfRow = 0.25;
    private readonly int[] shares = [.. Having(columns, ColumnKind.OfShares)];
    private readonly bool isPpm = Having(columns, ColumnKind.OfShares).Any(c => ColumnKind.IsPartsPerMillion(columns[c].Heading));
    private readonly int[] classes = [.. Having(columns, ColumnKind.Classes, ColumnKind.Statements)];
    private readonly int[] names = [.. Having(columns, ColumnKind.Name)];
    private readonly int[] numbers =
    [
        .. Enumerable
            .Range(0, columns.Count)
            .Where(i =>
                !columns[i].Kinds.Any(k => k is ColumnKind.Classes or ColumnKind.Statements or ColumnKind.Limits or ColumnKind.Old)
            ),
    ];

    // Ways to part rows are scored by the same texts again and again.
    private readonly Dictionary<string, bool> areShares = [];
    private readonly Dictionary<string, bool> areClasses = [];

    // The two ends of the shares stand in columns of their own.
    private bool HasEnds => shares.Length == 2 && shares.All(s => columns[s].Kinds is [ColumnKind.From or ColumnKind.To]);

    private static IEnumerable<int> Having(IReadOnlyList<Column> columns, params string[] kinds) =>
        Enumerable.Range(0, columns.Count).Where(i => columns[i].Kinds.Intersect(kinds).Any());

    /// <summary>The rows of all pages.</summary>
    /// <param name="body">Lines of the table without its heading.</param>
    /// <param name="rules">Ruled lines.</param>
    public IReadOnlyList<Row> Find(IReadOnlyList<BodyLine> body, IReadOnlyList<RuledLine> rules)
    {
        var rows = new List<Row>();
        var headings = new GroupHeadings(columns, wording, hazards);
        foreach (List<BodyLine> lines in Groups(body).Select(headings.Cut))
        {
            List<int> anchors = Anchors(lines);
            List<int> cas = [.. Enumerable.Range(0, lines.Count).Where(i => HasCas(lines[i]))];
            if (anchors.Count == 0 && cas.Count == 0)
            {
                JoinAll(rows, lines);
                continue;
            }

            IReadOnlyList<RowSplit> splits = Splits(lines, anchors, cas, rules, rows.Count == 0);
            RowSplit best = splits[0];
            string? group = null;
            for (int r = 0; r < best.Starts.Count; r++)
            {
                if (r == 0 && best.Starts[0] > 0)
                {
                    JoinAll(rows, lines[..best.Starts[0]]);
                }

                int end = r + 1 < best.Starts.Count ? best.Starts[r + 1] : lines.Count;
                List<BodyLine> own = lines[best.Starts[r]..end];
                if (r == 0 && rows.Count > 0 && IsRestOf(rows[^1], own))
                {
                    JoinAll(rows, own);
                    continue;
                }

                if (best.IsShown && IsGroupHeading(own) && (r > 0 || rows.Count == 0))
                {
                    group = string.Join(' ', own.Select(l => l.Line.Text));
                    Doubt(rows, Under(group));
                    continue;
                }

                if (own[0].Heading is { } above)
                {
                    Doubt(rows, Under(above));
                    group = above;
                }

                double near = best.Score - SameScore - (NearScoreOfRow * best.Starts.Count);
                bool doubted =
                    !best.IsShown
                    && splits.Skip(1).Any(s => (s.Score >= near || s.IsShown) && !HasSame(s, best.Starts[r], end, lines.Count));
                List<string> doubts = doubted ? ["nothing on the page shows for certain where this row begins and ends"] : [];
                if (r == 0 && best.Starts[0] > 0)
                {
                    doubts.Add("lines above it on its page were taken for the rest of the row before");
                }

                if (r == 0 && rows.Count > 0 && BeginsAboveItsNumber(own))
                {
                    doubts.Add("it is the first of its page, and classes above its number may belong to the row before");
                    Doubt(rows, "the row may go on over a page break");
                }

                if (r > 0 && EndsInClasses(lines[best.Starts[r - 1]..best.Starts[r]]))
                {
                    doubts.Add("classes that run over its columns' borders stand above it and were taken for the row before's");
                }

                if (group is not null)
                {
                    doubts.Add($"'{group}' above it was taken for the heading of several rows");
                }

                group = null;
                doubts.AddRange(
                    own.Skip(1)
                        .Select(l => l.Heading)
                        .OfType<string>()
                        .Select(h => $"'{h}' in it was taken for the heading of several rows")
                );
                rows.Add(ToRow(own, doubts));
            }
        }

        HashSet<TextLine> notes = [.. body.Where(l => l.IsNote).SelectMany(l => l.Cells).OfType<TextLine>()];
        return RowAlignment.Checked(rows, notes);
    }

    // What a page's end tore off the last row: lines with neither name nor number, or with the number that the row lacks and nothing but
    // numbers.
    private bool IsRestOf(Row last, List<BodyLine> own)
    {
        bool hasNumber = own.Exists(HasCas);
        bool isNamed = names.Any(n => own.Exists(l => l.Cells[n] is not null));
        bool lacksNumber = numbers.All(c => !ColumnKind.HasCas(last.Cells[c].Text));
        bool isOfNumbers = own.TrueForAll(l =>
            Enumerable.Range(0, columns.Count).All(c => l.Cells[c] is null || columns[c].Kinds.Contains(ColumnKind.Cas))
        );
        return hasNumber ? lacksNumber && isOfNumbers && names.Length > 0 && !names.Any(HoldsNumbers) : !isNamed;
    }

    private bool HoldsNumbers(int column) => columns[column].Kinds.Contains(ColumnKind.Cas);

    private static string Under(string heading) => $"'{heading}' under it was taken for the heading of the next rows";

    private static void Doubt(List<Row> rows, string doubt)
    {
        if (rows.Count > 0)
        {
            rows[^1] = rows[^1] with { Doubts = [.. rows[^1].Doubts, doubt] };
        }
    }

    // Where cells stand in the middle of their row, the rest of a row that a page's end tore looks like the upper half of the next.
    private bool BeginsAboveItsNumber(List<BodyLine> lines) =>
        lines.Exists(HasCas) && lines.TakeWhile(l => !HasCas(l)).Any(l => Array.Exists(classes, c => l.Cells[c] is not null));

    private bool EndsInClasses(IReadOnlyList<BodyLine> lines) =>
        lines.Reverse().TakeWhile(l => l.Spans).Any(l => hazards.Read(l.Line.Text).Classes is { Count: > 0 });

    // A line of its own that says neither number, share nor class in any column: "Fragrances", "Solvents".
    private bool IsGroupHeading(IReadOnlyList<BodyLine> lines) =>
        lines.Count == 1
        && !lines[0].Spans
        && lines[0].Cells.Count(c => c is not null) == 1
        && !classes.Any(c => lines[0].Cells[c] is not null)
        && !lines[0].Line.Text.Any(char.IsAsciiDigit)
        && char.IsUpper(lines[0].Line.Text[0])
        && lines[0].Line.Phrases().Count == 1;

    private static IEnumerable<List<BodyLine>> Groups(IReadOnlyList<BodyLine> body)
    {
        var group = new List<BodyLine>();
        foreach (BodyLine line in body)
        {
            if (group.Count > 0 && !group[^1].Line.IsBeside(line.Line))
            {
                yield return group;
                group = [];
            }

            group.Add(line);
        }

        if (group.Count > 0)
        {
            yield return group;
        }
    }

    private static bool HasSame(RowSplit other, int from, int to, int count)
    {
        int at = other.Starts.ToList().IndexOf(from);
        return at >= 0 && (at + 1 < other.Starts.Count ? other.Starts[at + 1] : count) == to;
    }

    private Row ToRow(IReadOnlyList<BodyLine> lines, IReadOnlyList<string> doubts) =>
        new(lines[0].Line.Page, Cells(lines), [.. lines.Where(l => l.Spans).Select(l => l.Line)], [.. doubts, .. OnBorders(lines)]);

    private static IEnumerable<string> OnBorders(IReadOnlyList<BodyLine> lines) =>
        lines
            .Select(l => l.OnBorder)
            .OfType<string>()
            .Select(word => $"'{word}' runs over the border between two columns: parts of it may belong to the other one");

    private Cell[] Cells(IReadOnlyList<BodyLine> lines) =>
        [.. Enumerable.Range(0, columns.Count).Select(c => new Cell([.. lines.Select(l => l.Cells[c]).OfType<TextLine>()]))];

    // What stands above the first row of a page goes on with the last one of the page before.
    private void JoinAll(List<Row> rows, IReadOnlyList<BodyLine> lines)
    {
        if (lines.Count == 0)
        {
            return;
        }

        if (rows.Count == 0)
        {
            rows.Add(ToRow(lines, []));
            return;
        }

        Row row = rows[^1];
        rows[^1] = row with
        {
            Cells = [.. row.Cells.Zip(Cells(lines), (a, b) => new Cell([.. a.Lines, .. b.Lines]))],
            Notes = [.. row.Notes, .. lines.Where(l => l.Spans).Select(l => l.Line)],
            Doubts = [.. row.Doubts, "the row goes on over a page break", .. OnBorders(lines)],
        };
    }

    private bool IsShare(string text)
    {
        if (!areShares.TryGetValue(text, out bool isOne))
        {
            areShares[text] = isOne = ShareText.Read(text, wording, isPpm).Success;
        }

        return isOne;
    }

    private bool IsClasses(string text)
    {
        if (!areClasses.TryGetValue(text, out bool isOne))
        {
            HazardReading read = hazards.Read(text);
            areClasses[text] = isOne = read.Classes is not null && read.Doubts.Count == 0;
        }

        return isOne;
    }

    private bool HasCas(BodyLine line) => numbers.Any(c => line.Cells[c] is { } cell && ColumnKind.HasCas(cell.Text));

    private string Share(BodyLine line) =>
        string.Join(HasEnds ? " - " : " ", shares.Select(c => line.Cells[c]?.Text ?? "").Where(t => t.Length > 0));

    // Lines on which a share begins; where CAS number and share stand in one column, lines on which the number does.
    private List<int> Anchors(List<BodyLine> lines)
    {
        if (shares.Length == 0)
        {
            return [];
        }

        bool withCas = shares.Any(s => columns[s].Kinds.Contains(ColumnKind.Cas));
        var anchors = new List<int>();
        string text = "";
        for (int i = 0; i < lines.Count; i++)
        {
            string share = Share(lines[i]);
            if (withCas)
            {
                if (HasCas(lines[i]))
                {
                    anchors.Add(i);
                }

                continue;
            }

            if (!share.Any(char.IsAsciiDigit) && !share.Any(c => c is '<' or '>' or '≤' or '≥'))
            {
                continue;
            }

            if (anchors.Count > 0 && IsRestOf(lines[anchors[^1]], text, lines[i], share))
            {
                text += " " + share;
                continue;
            }

            anchors.Add(i);
            text = share;
        }

        return anchors;
    }

    private bool IsRestOf(BodyLine before, string text, BodyLine line, string share)
    {
        bool near = line.Line.Frame.Bottom - before.Line.Frame.Bottom < WidestSplitShareMm;
        bool partial = !IsShare(text) || share.TrimStart() is ['<', ..] or ['≤', ..] or ['-', ..] or ['\u2013', ..];
        return near && partial && IsShare(text + " " + share);
    }

    private List<RowSplit> Splits(List<BodyLine> lines, List<int> anchors, List<int> cas, IReadOnlyList<RuledLine> rules, bool isFirst)
    {
        var splits = new List<RowSplit>();
        void Add(List<int> found, bool shown)
        {
            List<int> starts = [.. found.Select(s => AfterNotes(lines, s)).Distinct()];
            if (starts.Count > 0 && !splits.Any(s => s.Starts.SequenceEqual(starts) && (s.IsShown || !shown)))
            {
                splits.Add(new RowSplit(starts, shown, Score(lines, starts)));
            }
        }

        Add(ByRules(lines, rules), true);
        foreach (List<int> at in new[] { anchors, cas }.Where(a => a.Count > 0))
        {
            Add(at, IsTopAligned(lines, at, isFirst));
            (List<int> gaps, bool clear) = ByGaps(lines, at, isFirst);
            Add(gaps, clear);
            Add(ByNearness(lines, at), false);
        }

        return [.. splits.OrderByDescending(s => s.Score + (s.IsShown ? SameScore : 0)).ThenByDescending(s => s.IsShown)];
    }

    // No gap between two anchors is clearly wider than the one right above the lower of them.
    private static bool IsWidest(List<BodyLine> lines, int above, int start)
    {
        double Gap(int i) => lines[i].Line.Frame.Bottom - lines[i - 1].Line.Frame.Bottom;
        return Enumerable.Range(above + 1, start - above).Where(i => !lines[i].IsNote).All(i => Gap(i) <= ClearlyWider * Gap(start));
    }

    private static int AfterNotes(List<BodyLine> lines, int start)
    {
        int at = start;
        while (at + 1 < lines.Count && lines[at].IsNote && at > 0)
        {
            at++;
        }

        return at;
    }

    // Rows that begin on their first line show it: nothing stands above the first one, and no cell begins lower.
    private bool IsTopAligned(List<BodyLine> lines, List<int> starts, bool isFirst)
    {
        if (starts[0] > 0 && isFirst)
        {
            return false;
        }

        for (int r = 0; r < starts.Count; r++)
        {
            int end = r + 1 < starts.Count ? starts[r + 1] : lines.Count;
            List<BodyLine> own = [.. lines[starts[r]..end].Where(l => !l.Spans)];
            if (
                (r > 0 && !IsWidest(lines, starts[r - 1], starts[r]))
                || own.Count == 0
                || Enumerable.Range(0, columns.Count).Any(c => own[0].Cells[c] is null && own.Any(l => l.Cells[c] is not null))
            )
            {
                return false;
            }
        }

        return true;
    }

    private static List<int> ByRules(List<BodyLine> lines, IReadOnlyList<RuledLine> rules)
    {
        double left = lines.Min(l => l.Line.Frame.Left);
        double right = lines.Max(l => l.Line.Frame.Right);
        List<double> level =
        [
            .. rules
                .Where(r => r.IsLevel && r.Page == lines[0].Line.Page)
                .GroupBy(r => Math.Round(r.Box.CentreY * 2) / 2)
                .Where(g =>
                    g.Max(r => r.Box.Right) - g.Min(r => r.Box.Left) > 0.6 * (right - left)
                    && g.Sum(r => r.Box.Width) > 0.6 * (right - left)
                )
                .Select(g => g.Average(r => r.Box.CentreY))
                .Order(),
        ];
        List<int> starts = [];
        int band = -1;
        for (int i = 0; i < lines.Count; i++)
        {
            int own = level.Count(y => y < lines[i].Line.Frame.CentreY);
            if (own != band && !(lines[i].Spans && lines[i].IsNote))
            {
                starts.Add(i);
            }

            band = own;
        }

        return starts.Count > 1 || level.Count > 0 ? starts : [];
    }

    private static (List<int> Starts, bool Clear) ByGaps(List<BodyLine> lines, List<int> anchors, bool isFirst)
    {
        double Gap(int i) => lines[i].Line.Frame.Bottom - lines[i - 1].Line.Frame.Bottom;
        List<int> starts = [FirstRow(lines, anchors[0], isFirst, Gap)];
        bool allClear = true;
        for (int k = 1; k < anchors.Count; k++)
        {
            List<(int At, double Gap)> gaps =
            [
                .. Enumerable
                    .Range(anchors[k - 1] + 1, anchors[k] - anchors[k - 1])
                    .Where(i => !lines[i].IsNote)
                    .Select(i => (i, Gap(i)))
                    .DefaultIfEmpty((anchors[k], 0)),
            ];
            (int at, double widest) = gaps.MaxBy(g => g.Gap);
            double others = gaps.Where(g => g.At != at).Select(g => g.Gap).DefaultIfEmpty(0).Max();
            bool clear = gaps.Count == 1 || widest > ClearlyWider * others;
            starts.Add(clear ? at : anchors[k]);
            allClear &= clear;
        }

        return (starts, allClear);
    }

    // On the first page the table starts with a row; later pages may start with the rest of one, parted by a wider gap.
    private static int FirstRow(List<BodyLine> lines, int first, bool isFirst, Func<int, double> gapBefore)
    {
        if (isFirst || first == 0)
        {
            return 0;
        }

        (int at, double gap) = Enumerable.Range(1, first).Select(i => (i, gapBefore(i))).MaxBy(g => g.Item2);
        double usual = Enumerable.Range(1, first).Where(i => i != at).Select(gapBefore).DefaultIfEmpty(0).Max();
        return gap > Math.Max(ClearlyWider * usual, WidestPitch * lines[at].Line.Words[0].TypeSize) ? at : 0;
    }

    // Every line goes to the nearest anchor, as where cells stand in the middle of their row.
    private static List<int> ByNearness(List<BodyLine> lines, List<int> anchors)
    {
        List<int> starts = [0];
        for (int k = 1; k < anchors.Count; k++)
        {
            double middle = (lines[anchors[k - 1]].Line.Frame.Bottom + lines[anchors[k]].Line.Frame.Bottom) / 2;
            int at = Enumerable
                .Range(anchors[k - 1] + 1, anchors[k] - anchors[k - 1])
                .First(i => lines[i].Line.Frame.Bottom >= middle - 0.1);
            starts.Add(at);
        }

        return starts;
    }

    private double Score(List<BodyLine> lines, List<int> starts)
    {
        double score = 0;
        for (int r = 0; r < starts.Count; r++)
        {
            int end = r + 1 < starts.Count ? starts[r + 1] : lines.Count;
            List<BodyLine> own = lines[starts[r]..end];
            score += IsGroupHeading(own) ? 0 : Score(Cells(own));
        }

        return score;
    }

    private double Score(Cell[] cells)
    {
        int cas = numbers.SelectMany(c => ColumnKind.CasPattern().Matches(cells[c].Text).Select(m => m.Value)).Distinct().Count();
        double score = cas switch
        {
            1 => 2,
            0 => -1,
            _ => -3,
        };
        foreach (int share in shares)
        {
            string text = ColumnKind.CasPattern().Replace(cells[share].Text, " ");
            score += (IsShare(text) ? 2.0 : -2) / shares.Length;
        }

        foreach (int name in names)
        {
            score += cells[name].Text.Any(char.IsLetter) ? 1 : -2;
        }

        if (classes.Length > 0)
        {
            string text = string.Join(" ; ", classes.Select(c => cells[c].Text).Where(t => t.Length > 0));
            score += IsClasses(text) ? 1 : -0.5;
        }

        return score;
    }
}

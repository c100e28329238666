using Chandlery.Intake.Pages;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Tables;

/// <summary>Rebuilds an ingredient table from lines of text.</summary>
/// <param name="wording">Headings of columns.</param>
/// <param name="hazards">How classes are written.</param>
internal sealed class TableFinder(SheetWording wording, HazardText hazards)
{
    private const double BlankOfTypeSize = 0.5;
    private const double OverBorderMm = 0.7;
    private static readonly string[] NoteLabels = ["ate", "m", "limits"];
    private readonly HeadingFinder headings = new(wording);

    /// <summary>The table among these lines; null when no line heads one.</summary>
    /// <param name="lines">Lines of a section, in reading order over all its pages.</param>
    /// <param name="pages">The pages, for ruled lines.</param>
    public Table? Find(IReadOnlyList<TextLine> lines, IReadOnlyList<SheetPage> pages)
    {
        int first = headings.First(lines);
        if (first < 0)
        {
            return null;
        }

        (int from, int to) = headings.Extent(lines, first, pages);
        List<TextLine> heading = [.. lines.Skip(from).Take(to - from + 1)];
        HashSet<string> headingTexts = [.. heading.Select(l => l.Text)];
        List<TextLine> body =
        [
            .. lines
                .Skip(to + 1)
                .TakeWhile(l => !IsEnd(l))
                .Where(l => !headingTexts.Contains(l.Text) && !ColumnKind.IsTableHeading(l, wording))
                .SkipWhile(IsRestOfHeading),
        ];
        body = [.. RowNumbers.Without(body)];
        return body.Count == 0 ? null : Build(heading, body, pages);
    }

    // A page's end may part a heading's lines: "Classification according to Regulation (EC) No" and "1272/2008".
    private static bool IsRestOfHeading(TextLine line) =>
        line.Phrases().Count == 1 && ColumnKind.IsOfLaw(line.Text) && !ColumnKind.HasData(line.Text);

    private Table Build(List<TextLine> heading, List<TextLine> body, IReadOnlyList<SheetPage> pages)
    {
        List<TextLine> all = [.. heading, .. body];
        List<RuledLine> rules = [.. RulesOf(all, pages)];
        IReadOnlyList<double> ruled = ColumnFinder.Ruled(all, rules);
        IReadOnlyList<TextLine> clusters = headings.Clusters(
            heading,
            ruled.Count > 0 ? [.. ruled.Select(r => (r, r))] : ColumnFinder.Gaps(body)
        );
        IReadOnlyList<double> cuts = ColumnFinder.Between(clusters, body, ruled);
        List<Column> columns = WithoutSecondUnit(Columns(clusters, cuts));
        List<double> separators = [.. cuts.Where(c => !double.IsNaN(c))];
        List<BodyLine> cut = WithoutProse([.. WithWholeNotes([.. body.Select(l => Cut(l, separators, columns))], columns)]);
        return new Table(columns, new RowFinder(columns, wording, hazards).Find(cut, rules));
    }

    // The label of a note whose figure stands in the next line ("Acute toxicity estimate" over "(oral): 500 mg/kg") is part of the note, and
    // two lines of one column may say together what neither says alone ("Skin Sens. 1: C ≥" over "0.01 %").
    private IEnumerable<BodyLine> WithWholeNotes(List<BodyLine> lines, List<Column> columns)
    {
        for (int i = 0; i < lines.Count; i++)
        {
            BodyLine? next = i + 1 < lines.Count ? lines[i + 1] : null;
            bool isLabel =
                next is { IsNote: true, Spans: true }
                && !lines[i].Spans
                && Alone([.. lines[i].Cells]) >= 0
                && NoteLabels.Any(k => wording.Labels[k].Contains(Phrase.Plain(lines[i].Line.Text)));
            if (next is not null && IsPartedNote(lines[i], next, columns))
            {
                TextLine whole = lines[i].Line.Only([.. lines[i].Line.Words, .. next.Line.Words]);
                yield return new BodyLine(whole, new TextLine?[next.Cells.Count], true, true);
                i++;
                continue;
            }

            yield return isLabel ? new BodyLine(lines[i].Line, new TextLine?[lines[i].Cells.Count], true, true) : lines[i];
        }
    }

    private bool IsPartedNote(BodyLine line, BodyLine next, List<Column> columns)
    {
        int column = line.Spans || next.Spans || line.IsNote || next.IsNote ? -1 : Alone([.. line.Cells]);
        return column >= 0
            && column == Alone([.. next.Cells])
            && line.Line.IsBeside(next.Line)
            && !columns[column].Kinds.Any(k => HoldsNotes(k) || k is ColumnKind.Classes or ColumnKind.Statements)
            && hazards.ReadExtras(line.Line.Text + " " + next.Line.Text) is not null;
    }

    // Headings that nothing parts share a column.
    private List<Column> Columns(IReadOnlyList<TextLine> clusters, IReadOnlyList<double> cuts)
    {
        var columns = new List<Column>();
        string text = HeadingFinder.LinedText(clusters[0]);
        for (int i = 1; i <= clusters.Count; i++)
        {
            if (i < clusters.Count && double.IsNaN(cuts[i - 1]))
            {
                text += " " + HeadingFinder.LinedText(clusters[i]);
                continue;
            }

            string heading = text.Replace("- ", "-", StringComparison.Ordinal);
            columns.Add(new Column(ColumnKind.Of(heading, wording), text.Replace('\n', ' ')));
            text = i < clusters.Count ? HeadingFinder.LinedText(clusters[i]) : "";
        }

        return columns;
    }

    // Where percent and parts per million stand side by side, percent counts.
    private static List<Column> WithoutSecondUnit(List<Column> columns)
    {
        bool InPercent(Column c) => c.Kinds.Contains(ColumnKind.Share) && !ColumnKind.IsPartsPerMillion(c.Heading);
        return columns.Any(InPercent)
            ? [.. columns.Select(c => c.Kinds.Contains(ColumnKind.Share) && !InPercent(c) ? c with { Kinds = [ColumnKind.Ignored] } : c)]
            : columns;
    }

    // A line of one phrase that runs over a border belongs to no cell; one with numbers of its own is a row all the same, and a single word
    // is one that was too long for its column.
    private BodyLine Cut(TextLine line, List<double> separators, List<Column> columns)
    {
        bool crosses = separators.Any(s => line.Words.Any(w => w.Box.Left < s && w.Box.Right > s));
        bool runsOver = line.Phrases().Count == 1 && separators.Any(s => IsInBlank(line, s));
        bool isSentence = line.Words.Count > 1 || hazards.ReadExtras(line.Text) is not null;
        if ((crosses || runsOver) && isSentence && !ColumnKind.HasCas(line.Text) && line.Phrases().Count == 1)
        {
            // Classes may begin a row; what says less belongs to the row above.
            bool isNote = hazards.Read(line.Text).Classes is not { Count: > 0 };
            return new BodyLine(line, new TextLine?[separators.Count + 1], true, isNote);
        }

        var cells = new TextLine?[separators.Count + 1];
        foreach (IGrouping<int, Word> part in line.Words.GroupBy(w => separators.Count(s => s < w.Box.CentreX)))
        {
            cells[part.Key] = line.Only([.. part]);
        }

        int only = Alone(cells);
        bool isExtra = only >= 0 && !columns[only].Kinds.Any(HoldsNotes) && hazards.ReadExtras(cells[only]!.Text) is not null;
        bool isOfClasses = isExtra && columns[only].Kinds.Any(k => k is ColumnKind.Classes or ColumnKind.Statements);
        return isExtra && !isOfClasses
            ? new BodyLine(line, new TextLine?[cells.Length], true, true)
            : new BodyLine(line, cells, false, isExtra)
            {
                OnBorder = line
                    .Words.FirstOrDefault(w => separators.Any(s => w.Box.Left < s - OverBorderMm && w.Box.Right > s + OverBorderMm))
                    ?.Text,
            };
    }

    // A border that falls between two words of one sentence.
    private static bool IsInBlank(TextLine line, double at) =>
        Enumerable
            .Range(1, line.Words.Count - 1)
            .Any(w =>
                line.Words[w - 1].Box.Right <= at
                && line.Words[w].Box.Left >= at
                && line.Words[w].Box.Left - line.Words[w - 1].Box.Right < BlankOfTypeSize * line.Words[w].TypeSize
            );

    // The only column that a line has words in; -1 when there are several. A short note under a row may fit into one column.
    private static int Alone(TextLine?[] cells) => cells.Count(c => c is not null) == 1 ? Array.FindIndex(cells, c => c is not null) : -1;

    private static bool HoldsNotes(string kind) => kind is ColumnKind.Limits or ColumnKind.M or ColumnKind.Ate;

    // Sentences under the table run across its columns, and say nothing that a note under a row says.
    private List<BodyLine> WithoutProse(List<BodyLine> body)
    {
        int last = body.FindLastIndex(l => !l.Spans);
        for (int end = body.Count; end > last + 1; end--)
        {
            if (hazards.ReadExtras(string.Join(' ', body[(last + 1)..end].Select(l => l.Line.Text))) is not null)
            {
                return body[..end];
            }
        }

        return body[..(last + 1)];
    }

    private bool IsEnd(TextLine line) =>
        line.Text.Length > 12 && Phrase.AnyIn(wording.Lists["tableEnds"], line.Text) && !ColumnKind.HasData(line.Text[..12]);

    // Rules near the table, moved with the lines of a right column of text.
    private static IEnumerable<RuledLine> RulesOf(IReadOnlyList<TextLine> lines, IReadOnlyList<SheetPage> pages)
    {
        foreach (IGrouping<(int Page, double ShiftMm), TextLine> group in lines.GroupBy(l => (l.Page, l.ShiftMm)))
        {
            double top = group.Min(l => l.Frame.Top) - 4;
            double bottom = group.Max(l => l.Frame.Bottom) + 4;
            double left = group.Min(l => l.Frame.Left) - 4;
            double right = group.Max(l => l.Frame.Right) + 8;
            foreach (RuledLine rule in pages.Where(p => p.Number == group.Key.Page).SelectMany(p => p.Rules))
            {
                Box box = rule.Box with { Left = rule.Box.Left - group.Key.ShiftMm, Right = rule.Box.Right - group.Key.ShiftMm };
                if (box.Bottom > top && box.Top < bottom && box.Right > left && box.Left < right)
                {
                    yield return rule with
                    {
                        Box = box,
                    };
                }
            }
        }
    }
}

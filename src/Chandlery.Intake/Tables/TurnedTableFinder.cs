using Chandlery.Intake.Pages;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Tables;

/// <summary>Rebuilds an ingredient table that stands on its side: the headings are its first column, and each other column is an ingredient.</summary>
/// <param name="wording">Headings.</param>
/// <param name="hazards">How classes are written.</param>
internal sealed class TurnedTableFinder(SheetWording wording, HazardText hazards)
{
    /// <summary>The doubt of rows of a table in which something speaks against the way in which it was turned.</summary>
    public const string OnItsSide = "the table stands on its side: one of its columns was read as this row";

    private const double RoomMm = 0.5;
    private const double SameEdgeMm = 0.4;
    private const int FewestKinds = 3;
    private const int FewestIngredients = 2;
    private const int MostHeadings = 30;
    private const int MostIngredients = 60;

    /// <summary>The table with a row for each ingredient; null when no line with several CAS numbers begins with their heading.</summary>
    /// <remarks>Where there are more ingredients than columns have room, the same headings come again in further tables below.</remarks>
    /// <param name="lines">Lines of a section, in reading order over all its pages.</param>
    /// <param name="pages">The pages, for ruled lines.</param>
    public Table? Find(IReadOnlyList<TextLine> lines, IReadOnlyList<SheetPage> pages)
    {
        List<TextLine> own = [.. lines.TakeWhile(l => !Phrase.AnyIn(wording.Lists["tableEnds"], l.Text))];
        if (own.FirstOrDefault(l => IsOfNumbers(l, FewestIngredients)) is not { } numbers)
        {
            return null;
        }

        List<RuledLine> rules = [.. pages.SelectMany(p => p.Rules)];
        double edge = HeadingsEdge(numbers, rules);
        List<int> heads = Heads(own, edge);
        List<int> tops = new HeadedBands(own, heads, rules, edge).Tops;
        List<int> starts =
        [
            .. heads
                .Zip(tops)
                .Where(h => KindsOf(HeadingOf(own[h.First], edge)!).SequenceEqual(KindsOf(HeadingOf(own[heads[0]], edge)!)))
                .Select(h => h.Second),
        ];
        List<Table?> parts =
        [
            .. starts.Select((from, at) => Part([.. own.Take(at + 1 < starts.Count ? starts[at + 1] : own.Count).Skip(from)], rules)),
        ];
        return parts is [{ } first, ..] && parts.All(p => p is not null && IsAlike(p, first))
            ? new Table(first.Columns, [.. parts.SelectMany(p => p!.Rows)])
            : null;
    }

    private static bool IsAlike(Table one, Table other) =>
        one.Columns.Count == other.Columns.Count && one.Columns.Zip(other.Columns).All(p => p.First.Kinds.SequenceEqual(p.Second.Kinds));

    // One table among these lines, the first of which begins with its first heading.
    private Table? Part(IReadOnlyList<TextLine> lines, IReadOnlyList<RuledLine> rules)
    {
        if (lines.FirstOrDefault(l => IsOfNumbers(l, 1)) is not { } numbers)
        {
            return null;
        }

        double edge = HeadingsEdge(numbers, rules);
        List<int> heads = Heads(lines, edge);
        List<Column> columns = [.. heads.Select(h => HeadingOf(lines[h], edge)!).Select(h => new Column(KindsOf(h), h))];
        HashSet<string> kinds = [.. columns.SelectMany(c => c.Kinds).Where(k => k != ColumnKind.Ignored)];
        if (
            kinds.Count < FewestKinds
            || heads.Count > MostHeadings
            || numbers.Phrases().Count > MostIngredients
            || kinds.Count != columns.Count(c => !c.Kinds.Contains(ColumnKind.Ignored))
        )
        {
            return null;
        }

        List<(TextLine Line, int Head)> body = [.. Headed(lines, heads, numbers, rules, edge)];
        if (Borders(numbers, [.. body.Select(b => b.Line)], rules, edge) is not { } borders)
        {
            return null;
        }

        // Column 0 is that of the headings.
        Cell CellOf(int head, int column) =>
            new([
                .. body.Where(b => b.Head == head)
                    .Select(b => (b.Line, Words: b.Line.Words.Where(w => borders.Count(x => x < w.Box.CentreX) == column).ToList()))
                    .Where(b => b.Words.Count > 0)
                    .Select(b => b.Line.Only(b.Words)),
            ]);
        List<IReadOnlyList<Cell>> cells =
        [
            .. Enumerable.Range(0, borders.Count + 1).Select(c => (Cell[])[.. Enumerable.Range(0, heads.Count).Select(h => CellOf(h, c))]),
        ];
        bool isSure = new TurnedCheck(wording, hazards).IsSure(columns, cells[0], cells[1..]);
        return new Table(columns, [.. cells.Skip(1).Select(own => new Row(numbers.Page, own, [], isSure ? [] : [OnItsSide]))]);
    }

    // "CAS No." and then nothing but CAS numbers.
    private bool IsOfNumbers(TextLine line, int fewest)
    {
        IReadOnlyList<TextLine> phrases = line.Phrases();
        return phrases.Count > fewest
            && KindsOf(phrases[0].Text).Contains(ColumnKind.Cas)
            && phrases.Skip(1).All(p => ColumnKind.HasCas(p.Text))
            && !ColumnKind.HasCas(phrases[0].Text);
    }

    // Lines that begin with a heading; the rest of a wrapped heading may name the same thing once more.
    private List<int> Heads(IReadOnlyList<TextLine> lines, double edge)
    {
        var heads = new List<int>();
        IReadOnlyList<string> last = [];
        for (int i = 0; i < lines.Count; i++)
        {
            IReadOnlyList<string> kinds = HeadingOf(lines[i], edge) is { } heading ? KindsOf(heading) : [];
            if (kinds.Count > 0 && kinds.Except(last).Any())
            {
                heads.Add(i);
                last = kinds;
            }
        }

        return heads;
    }

    // Where the column of headings ends: at an upright ruled line, else right before the first number.
    private static double HeadingsEdge(TextLine numbers, IReadOnlyList<RuledLine> rules)
    {
        (double from, double to) = (numbers.Phrases()[0].Frame.Right, numbers.Phrases()[1].Frame.Left);
        return rules
            .Where(r => !r.IsLevel && r.Page == numbers.Page && r.Box.CentreX > from && r.Box.CentreX < to && IsLevelWith(r, numbers))
            .Select(r => r.Box.CentreX)
            .DefaultIfEmpty(to - RoomMm)
            .Max();
    }

    private static bool IsLevelWith(RuledLine rule, TextLine line) => rule.Box.Top < line.Box.Bottom && rule.Box.Bottom > line.Box.Top;

    // The words of a line in the column of headings; null where there are none.
    private static string? HeadingOf(TextLine line, double edge)
    {
        string text = string.Join(' ', line.Words.TakeWhile(w => w.Box.CentreX < edge).Select(w => w.Text));
        return text.Length == 0 || ColumnKind.HasData(text) ? null : text;
    }

    private IReadOnlyList<string> KindsOf(string heading) => ColumnKind.Of(heading, wording);

    // Each line with the heading that it belongs to: between the same level rules, or in the same band of lines. Sentences that begin among
    // the headings and run on into the columns belong to none.
    private static IEnumerable<(TextLine Line, int Head)> Headed(
        IReadOnlyList<TextLine> lines,
        List<int> heads,
        TextLine numbers,
        IReadOnlyList<RuledLine> rules,
        double edge
    )
    {
        var bands = new HeadedBands(lines, heads, rules, edge);
        List<double> lefts = [.. numbers.Phrases().Skip(1).Select(p => p.Frame.Left)];
        bool IsProse(TextLine line) =>
            line.Words[0].Box.CentreX < edge
            && line.Phrases()[0].Frame.Right > edge
            && !line.Words.Any(w => lefts.Exists(x => Math.Abs(w.Box.Left - x) < SameEdgeMm));
        for (int i = 0; i < lines.Count; i++)
        {
            bool isProse = !heads.Contains(i) && IsProse(lines[i]);
            if (isProse && i > heads[^1])
            {
                yield break;
            }

            if (bands.HeadOf(i) is var head and >= 0 && !isProse)
            {
                yield return (lines[i], head);
            }
        }
    }

    // Where each ingredient's column begins; null where neither a ruled line nor a white river parts two of them.
    private static List<double>? Borders(TextLine numbers, IReadOnlyList<TextLine> body, IReadOnlyList<RuledLine> rules, double edge)
    {
        IReadOnlyList<TextLine> phrases = numbers.Phrases();
        // Other tables on the page may have their rules between the same ingredients.
        List<RuledLine> own = [.. rules.Where(r => body.Any(l => l.Page == r.Page && IsLevelWith(r, l)))];
        IReadOnlyList<double> ruled = ColumnFinder.Ruled(body, own);
        IReadOnlyList<(double From, double To)> gaps = ColumnFinder.GapsOfAll(body);
        List<double> borders = [edge];
        for (int i = 2; i < phrases.Count; i++)
        {
            (double from, double to) = (phrases[i - 1].Frame.CentreX, phrases[i].Frame.CentreX);
            List<double> between = [.. ruled.Where(x => x > from && x < to)];
            List<double> rivers = [.. gaps.Select(g => (g.From + g.To) / 2).Where(x => x > from && x < to)];
            if (between.Count + rivers.Count == 0 && !IsLeftEdge(phrases[i].Frame.Left, body))
            {
                return null;
            }

            borders.Add(
                between.Count > 0 ? between[^1]
                : IsLeftEdge(phrases[i].Frame.Left, body) ? phrases[i].Frame.Left - SameEdgeMm
                : rivers[^1]
            );
        }

        return borders;
    }

    // Cells of one column begin there, and no word runs across: where columns stand close, blanks inside cells look like a river too.
    private static bool IsLeftEdge(double x, IReadOnlyList<TextLine> body) =>
        body.Count(l => l.Words.Any(w => Math.Abs(w.Box.Left - x) < SameEdgeMm)) >= FewestKinds
        && !body.Any(l => l.Words.Any(w => w.Box.Left < x - SameEdgeMm && w.Box.Right > x));
}

using Chandlery.Intake.Pages;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Tables;

/// <summary>Finds the lines that head a table, and the heading of each column among their phrases.</summary>
/// <param name="wording">Headings of columns.</param>
internal sealed class HeadingFinder(SheetWording wording)
{
    private const double FarthestOfTypeSize = 1.75;
    private const double WideBlankOfTypeSize = 0.5;
    private const double ClearlyWider = 1.2;
    private const double TallestHeadingMm = 30;
    private const double SameEdgeMm = 0.4;
    private const double HairMm = 0.4;
    private const int LongestWrappedHeading = 40;
    private const int MostLinesAtOnce = 4;

    /// <summary>Index of the first line that is surely part of a heading; -1 when there is none.</summary>
    public int First(IReadOnlyList<TextLine> lines) =>
        Enumerable.Range(0, lines.Count).FirstOrDefault(i => ColumnKind.IsTableHeading(lines[i], wording), -1);

    /// <summary>First and last line of the heading around a line of it.</summary>
    /// <remarks>
    /// A heading's cells may wrap over several lines, above and below the line that was recognised. Ruled lines around it
    /// decide; without them, lines close by that say nothing but headings belong to it.
    /// </remarks>
    public (int From, int To) Extent(IReadOnlyList<TextLine> lines, int first, IReadOnlyList<SheetPage> pages)
    {
        (double top, double bottom) = RulesAround(lines[first], pages);
        bool ruled = bottom - top < TallestHeadingMm;
        if (ruled && Band(lines, first, top, bottom) is { } band)
        {
            return band;
        }

        bool Belongs(TextLine line, TextLine next) =>
            line.IsBeside(lines[first]) && (ruled ? line.Box.CentreY > top && line.Box.CentreY < bottom : IsNear(line, next));
        // Cells that stand in the middle of a higher heading put the other cells' lines between the lines of one cell.
        bool IsBetween(TextLine line) =>
            line.IsBeside(lines[first])
            && !ColumnKind.HasData(line.Text)
            && Math.Abs(line.Frame.Bottom - lines[first].Frame.Bottom) < lines[first].Words[0].TypeSize;
        List<TextLine> heading = [lines[first]];
        int from = first;
        int to = first;
        int before;
        do
        {
            before = heading.Count;
            while (
                from > 0
                && (IsBetween(lines[from - 1]) || (Belongs(lines[from - 1], lines[from]) && IsHeadingLine(lines[from - 1], heading)))
            )
            {
                heading.Add(lines[--from]);
            }

            while (
                to + 1 < lines.Count
                && (
                    IsBetween(lines[to + 1])
                    || (
                        Belongs(lines[to + 1], lines[to])
                        && (ruled || !StandsOff(lines[to + 1], heading))
                        && IsHeadingLine(lines[to + 1], heading)
                    )
                )
            )
            {
                heading.Add(lines[++to]);
            }

            // Three or four lines may say together what the first of them does not.
            for (int more = Math.Min(MostLinesAtOnce, lines.Count - to - 1); more > 1; more--)
            {
                List<TextLine> below = [.. lines.Skip(to + 1).Take(more)];
                if (below.Select((l, at) => Belongs(l, lines[to + at])).All(b => b) && Complete(below, heading))
                {
                    heading.AddRange(below);
                    to += more;
                    break;
                }
            }
        } while (heading.Count > before);

        return (from, to);
    }

    // All lines between two level rules are the heading where none of them says what rows say.
    private static (int From, int To)? Band(IReadOnlyList<TextLine> lines, int first, double top, double bottom)
    {
        bool IsInside(TextLine line) => line.IsBeside(lines[first]) && line.Box.CentreY > top && line.Box.CentreY < bottom;
        int from = first;
        int to = first;
        while (from > 0 && IsInside(lines[from - 1]))
        {
            from--;
        }

        while (to + 1 < lines.Count && IsInside(lines[to + 1]))
        {
            to++;
        }

        return lines.Skip(from).Take(to - from + 1).Any(l => ColumnKind.HasData(l.Text)) ? null : (from, to);
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

    private static bool IsNear(TextLine one, TextLine other) =>
        Math.Abs(one.Frame.Bottom - other.Frame.Bottom) < FarthestOfTypeSize * Math.Max(one.Words[0].TypeSize, other.Words[0].TypeSize);

    // A line that is farther below than the heading's own lines are from each other begins a row, whatever stands over it.
    private static bool StandsOff(TextLine line, IReadOnlyList<TextLine> heading)
    {
        List<TextLine> phrases = [.. heading.SelectMany(h => h.Phrases())];
        double pitch = phrases
            .SelectMany(p => phrases.Where(o => Overlap(o, p)).Select(o => Math.Abs(o.Frame.Bottom - p.Frame.Bottom)))
            .DefaultIfEmpty(double.PositiveInfinity)
            .Min();
        return line.Frame.Bottom - heading.Max(h => h.Frame.Bottom) > ClearlyWider * pitch;
    }

    // A name alone under the first heading is a row, not a heading.
    private bool IsHeadingLine(TextLine line, IReadOnlyList<TextLine> heading)
    {
        if (ColumnKind.HasData(line.Text))
        {
            return false;
        }

        if (ColumnKind.IsTableHeading(line, wording))
        {
            return true;
        }

        List<TextLine> phrases = [.. line.Phrases().Where(p => p.Text.Any(char.IsLetterOrDigit))];
        List<TextLine> known = [.. heading.SelectMany(h => h.Phrases()).OrderBy(p => p.Frame.Left)];
        bool IsKind(TextLine p) => ColumnKind.Of(p.Text, wording).Count > 0;
        bool IsWrapped(TextLine p, IEnumerable<TextLine> under) =>
            p.Text.Length < LongestWrappedHeading && under.Any(k => k.Frame.Left < p.Frame.Right && p.Frame.Left < k.Frame.Right);
        if (phrases.Any(p => known.Any(k => Completes(k, p, heading))) && phrases.All(p => IsKind(p) || IsWrapped(p, known)))
        {
            return true;
        }

        return phrases.Count > 1 && phrases.Any(IsKind)
            ? phrases.All(p => IsKind(p) || IsWrapped(p, known))
            : phrases.All(p =>
                (IsKind(p) && (p.Frame.Left > known[0].Frame.Right || p.Frame.Right < known[0].Frame.Left || IsUnderMany(p)))
                || IsWrapped(p, known.Skip(1))
                || ColumnKind.IsOfLaw(p.Text)
            );
    }

    private bool Complete(IReadOnlyList<TextLine> below, IReadOnlyList<TextLine> heading)
    {
        if (below.Any(l => ColumnKind.HasData(l.Text)))
        {
            return false;
        }

        List<TextLine> known = [.. heading.SelectMany(h => h.Phrases())];
        List<TextLine> phrases = [.. below.SelectMany(l => l.Phrases()).Where(p => p.Text.Any(char.IsLetterOrDigit))];
        bool IsUnder(TextLine p, TextLine k) => k.Frame.Left < p.Frame.Right && p.Frame.Left < k.Frame.Right;
        bool isHeading = phrases.All(p => p.Text.Length < LongestWrappedHeading && known.Any(k => IsUnder(p, k)));
        return isHeading
            && known.Any(k =>
            {
                List<string> column = [.. phrases.Where(p => IsUnder(p, k)).Select(p => p.Text)];
                HashSet<string> alone = [.. column.Append(k.Text).SelectMany(t => ColumnKind.Of(t, wording)), ColumnKind.Ignored];
                return column.Count > 1 && ColumnKind.Of(string.Join('\n', column.Prepend(k.Text)), wording).Any(x => !alone.Contains(x));
            });
    }

    // A phrase over or under a heading, with which it names something that neither names alone: a wrapped heading, or a broken word.
    private bool Completes(TextLine known, TextLine phrase, IReadOnlyList<TextLine> heading)
    {
        if (phrase.Text.Length >= LongestWrappedHeading || !phrase.Text.Any(char.IsLetterOrDigit) || !Overlap(known, phrase))
        {
            return false;
        }

        // Of headings that stand close, only the words above or below count.
        List<Word> near = [.. known.Words.Where(w => w.Box.Left < phrase.Frame.Right && w.Box.Right > phrase.Frame.Left)];
        if (near.Count > 0 && near.Count < known.Words.Count && Completes(known.Only(near), phrase, [known.Only(near)]))
        {
            return true;
        }

        List<TextLine> column = [.. heading.SelectMany(h => h.Phrases()).Where(p => p.Frame == known.Frame || Overlap(p, known))];
        string Joined(IEnumerable<TextLine> parts) => string.Join('\n', parts.OrderBy(p => p.Frame.Bottom).Select(p => p.Text));
        HashSet<string> alone = [.. ColumnKind.Of(Joined(column), wording)];
        bool isBelow = phrase.Frame.Bottom > known.Frame.Bottom;
        alone.UnionWith(isBelow ? ColumnKind.Of(phrase.Text, wording) : []);
        return known.Text.Count(char.IsLetterOrDigit) > 2
            && ColumnKind.Of(Joined(column.Append(phrase)), wording).Any(k => k != ColumnKind.Ignored && !alone.Contains(k));
    }

    /// <summary>A heading's text with a line feed where one of its lines ends.</summary>
    public static string LinedText(TextLine heading)
    {
        var text = new System.Text.StringBuilder(heading.Words[0].Text);
        for (int w = 1; w < heading.Words.Count; w++)
        {
            Word word = heading.Words[w];
            bool isLower = Math.Abs(word.Box.Bottom - heading.Words[w - 1].Box.Bottom) > 0.3 * word.TypeSize;
            text.Append(isLower ? '\n' : ' ').Append(word.Text);
        }

        return text.ToString();
    }

    // A heading of several lines ("CAS No. / EC No. / REACH No.") in the first column: every line of it names a number.
    private bool IsUnderMany(TextLine phrase) =>
        ColumnKind.Of(phrase.Text, wording).All(k => k is not (ColumnKind.Name or ColumnKind.Classes or ColumnKind.Statements))
        && phrase.Text.Length < LongestWrappedHeading;

    /// <summary>The headings of the columns from left to right: phrases under each other belong together.</summary>
    /// <param name="heading">The heading's lines.</param>
    /// <param name="gaps">Where the body's columns part; headings that stand so close that they look like one phrase part there.</param>
    public IReadOnlyList<TextLine> Clusters(IReadOnlyList<TextLine> heading, IReadOnlyList<(double From, double To)> gaps)
    {
        var groups = new List<List<TextLine>>();
        List<TextLine> phrases = [.. heading.SelectMany(l => l.Phrases())];
        foreach (TextLine phrase in phrases.SelectMany(p => Aligned(p, phrases)).SelectMany(p => Parted(p, gaps)))
        {
            List<List<TextLine>> homes = [.. groups.Where(g => g.Any(p => Overlap(p, phrase)))];
            groups.RemoveAll(homes.Contains);
            groups.Add([.. homes.SelectMany(h => h), phrase]);
        }

        return [.. groups.SelectMany(Split).OrderBy(c => c.Frame.CentreX)];
    }

    private static bool Overlap(TextLine a, TextLine b) =>
        Math.Min(a.Frame.Right, b.Frame.Right) - Math.Max(a.Frame.Left, b.Frame.Left) > HairMm
        && Math.Abs(a.Frame.Bottom - b.Frame.Bottom) > 0.5;

    // A heading over two others heads both: "Concentration" over "min." and "max.".
    private static IEnumerable<TextLine> Split(List<TextLine> group)
    {
        List<TextLine> widest =
        [
            .. group.GroupBy(p => Math.Round(p.Frame.Bottom)).OrderByDescending(g => g.Count()).First().OrderBy(p => p.Frame.Left),
        ];
        if (widest.Count < 2)
        {
            yield return Joined(group);
            yield break;
        }

        foreach (TextLine own in widest)
        {
            yield return own.Only([
                .. group
                    .Where(p => p == own || (!widest.Contains(p) && Overlap(p, own)))
                    .OrderBy(p => p.Frame.Bottom)
                    .SelectMany(p => Within(p, own, widest.Count(w => Overlap(w, p)) > 1)),
            ]);
        }
    }

    // Only the text of a heading over several counts for each of them, not its width.
    private static IEnumerable<Word> Within(TextLine phrase, TextLine own, bool overSeveral) =>
        overSeveral ? phrase.Words.Select(w => w with { Box = own.Frame }) : phrase.Words;

    private static TextLine Joined(List<TextLine> group) => group[0].Only([.. group.OrderBy(p => p.Frame.Bottom).SelectMany(p => p.Words)]);

    // Headings that stand close part where a word begins right under or over the beginning of a heading in another line.
    private static IEnumerable<TextLine> Aligned(TextLine phrase, IReadOnlyList<TextLine> phrases)
    {
        int from = 0;
        for (int w = 1; w < phrase.Words.Count; w++)
        {
            double left = phrase.Words[w].Box.Left;
            bool begins = phrases.Any(p =>
                Math.Abs(p.Frame.Left - left) < SameEdgeMm
                && Math.Abs(p.Frame.Bottom - phrase.Frame.Bottom) > 0.5
                && phrases.Any(o => o.Frame.Bottom == p.Frame.Bottom && o.Frame.Right < p.Frame.Left && o.Frame.Right > phrase.Frame.Left)
            );
            if (begins)
            {
                yield return phrase.Only([.. phrase.Words.Skip(from).Take(w - from)]);
                from = w;
            }
        }

        yield return phrase.Only([.. phrase.Words.Skip(from)]);
    }

    private IEnumerable<TextLine> Parted(TextLine phrase, IReadOnlyList<(double From, double To)> gaps)
    {
        if (IsBound(phrase))
        {
            return [phrase];
        }

        foreach ((double from, double to) in gaps.Where(g => g.To > phrase.Frame.Left && g.From < phrase.Frame.Right))
        {
            // A heading begins where its column does; else it is the nearest one.
            double middle = (from + to) / 2;
            int nearest = phrase.Words.Count(w => w.Box.CentreX < middle);
            int aligned = Enumerable
                .Range(0, phrase.Words.Count)
                .FirstOrDefault(w => Math.Abs(phrase.Words[w].Box.Left - to) < SameEdgeMm, -1);
            foreach (int cut in new[] { aligned, nearest, nearest + 1, nearest - 1 }.Where(c => c > 0 && c < phrase.Words.Count))
            {
                TextLine first = phrase.Only([.. phrase.Words.Take(cut)]);
                TextLine rest = phrase.Only([.. phrase.Words.Skip(cut)]);
                bool isWide = rest.Words[0].Box.Left - first.Words[^1].Box.Right > WideBlankOfTypeSize * rest.Words[0].TypeSize;
                // "to" within "according to" heads no column.
                bool isInSentence = !isWide && IsBound(rest) && !IsBound(first) && rest.Text.All(c => char.IsLetter(c) || c == ' ');
                bool isInName = ColumnKind.Of(phrase.Text, wording).Except(Kinds(first, rest)).Except(ColumnKind.OfShares).Any();
                if ((isWide && cut == nearest) || (!isInSentence && !isInName && IsBorder(first, rest, cut == aligned)))
                {
                    return Parted(rest, gaps).Prepend(first);
                }
            }
        }

        return [phrase];
    }

    // "Specific conc. limits" names what neither "specific conc." nor "limits" does, and no column ends inside it.
    private IEnumerable<string> Kinds(TextLine first, TextLine rest) =>
        ColumnKind.Of(first.Text, wording).Concat(ColumnKind.Of(rest.Text, wording));

    private bool IsBound(TextLine phrase) => ColumnKind.Of(phrase.Text, wording) is [ColumnKind.From or ColumnKind.To];

    // Two headings that name different things, or one that names something right where its column begins. What one column often holds
    // together ("limits, M-factors and ATEs") is one heading.
    private bool IsBorder(TextLine first, TextLine rest, bool isAligned)
    {
        IReadOnlyList<string> kinds = ColumnKind.Of(first.Text, wording);
        IReadOnlyList<string> others = ColumnKind.Of(rest.Text, wording);
        bool together = kinds.Concat(others).All(k => k is ColumnKind.Limits or ColumnKind.M or ColumnKind.Ate);
        return !together && others.Count > 0 && !kinds.Intersect(others).Any() && (kinds.Count > 0 || isAligned);
    }
}

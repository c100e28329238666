using System.Globalization;
using System.Text.RegularExpressions;
using Chandlery.Intake.Pages;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Drafts;

/// <summary>
/// Reads an IFRA certificate: categories and limits in rows in either order, several to a line, lists of categories in one cell, or
/// turned so that categories stand above their limits.
/// </summary>
internal sealed class IfraReader(SheetWording wording, LabelFinder labels, int document)
{
    private const string OfCandles = "12";
    private const string Letters = "ABCDEF";
    private const int FewestLetters = 2;
    private const int LastCategory = 12;
    private const int MostOfAll = 6;
    private const int FewestAcross = 3;
    private const int LongestLine = 400;
    private const double RowsApartMm = 14;
    private readonly IfraMarks marks = new(wording);
    private readonly Regex amendmentNumber = NumberOfAmendment(wording);

    // "51st Amendment", "51. Amendment", "Amendment no. 51": the number before the word, with whatever letters make it an ordinal, or after.
    private static Regex NumberOfAmendment(SheetWording wording)
    {
        string amendment = IfraMarks.Alternatives(wording.Lists["amendment"]);
        string number = IfraMarks.Alternatives(wording.Lists["amendmentNumber"]);
        return new Regex(
            $@"(?<![0-9])(?:(?<n>[0-9]{{2}})(?:\.?[\p{{L}}ºª°]{{0,3}})?\s+(?:ifra\s+)?(?:{amendment})|(?:{amendment})\s*(?:(?:{number})\.?\s*)?(?<n>[0-9]{{2}})(?![0-9]))",
            RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
        );
    }

    /// <summary>What the certificate says.</summary>
    public OilDraft Read(IReadOnlyList<TextLine> lines)
    {
        SheetHead head = new HeadReader(wording, labels, document).Read(lines, lines);
        List<MarkedLine> marked =
        [
            .. lines.Where(l => l.Text.Length < LongestLine).Select(l => new MarkedLine(l, [.. l.Phrases().SelectMany(marks.Of)])),
        ];
        var limits = new List<(string Category, Found<string> Limit)>();
        var lost = new List<string>();
        for (int i = 0; i < marked.Count; i++)
        {
            if (marked[i].IsAcross)
            {
                Across(marked, i, limits, lost);
            }
            else if (marked[i].Categories.Any())
            {
                Row(marked, i, limits, lost);
            }
        }

        List<string> doubts =
        [
            .. lost.Distinct()
                .Where(c => limits.All(l => l.Category != c))
                .Select(c => $"the certificate names category {c}, for which no limit could be read"),
        ];
        doubts.AddRange(
            Missing(limits.Select(l => l.Category).ToHashSet())
                .Except(lost)
                .Select(c => $"the certificate gives no limit for category {c}, though it gives those beside it")
        );
        if (limits.All(l => l.Category != OfCandles))
        {
            doubts.Add("the certificate gives no limit for category 12, the candle's");
        }

        return OilDraft.Headed(head) with
        {
            Ifra = new DraftIfra(Amendment(lines), head.Revised, limits),
            Doubts = doubts,
        };
    }

    // What must be there too: where a category is parted by letters those before, and one more than the first; in a list of most
    // categories the others.
    private static IEnumerable<string> Missing(IReadOnlySet<string> categories)
    {
        HashSet<int> numbers = [.. categories.Select(c => int.Parse(c.TrimEnd([.. Letters]), CultureInfo.InvariantCulture))];
        IEnumerable<string> siblings = categories
            .Where(c => char.IsLetter(c[^1]))
            .SelectMany(c =>
                Letters.Take(Math.Max(FewestLetters, Letters.IndexOf(c[^1], StringComparison.Ordinal) + 1)).Select(l => c[..^1] + l)
            );
        IEnumerable<string> others =
            numbers.Count < MostOfAll
                ? []
                : Enumerable.Range(1, LastCategory).Where(n => !numbers.Contains(n)).Select(n => n.ToString(CultureInfo.InvariantCulture));
        return siblings.Concat(others).Distinct().Where(c => !categories.Contains(c));
    }

    /// <summary>A line with what it says of categories and limits.</summary>
    private sealed record MarkedLine(TextLine Line, IReadOnlyList<IfraMark> Marks)
    {
        public IEnumerable<IfraMark> Categories => Marks.Where(m => m.Limit is null);

        public IEnumerable<IfraMark> Limits => Marks.Where(m => m.Limit is not null);

        public bool IsAcross => !Limits.Any() && Categories.Count() >= FewestAcross;
    }

    // Categories and limits of one line, first with first, second with second.
    private void Row(List<MarkedLine> marked, int at, List<(string, Found<string>)> limits, List<string> lost)
    {
        List<IfraMark> categories = [.. Whole(marked, at)];
        List<IfraMark> own = [.. marked[at].Limits];
        for (int c = 0; c < categories.Count; c++)
        {
            string? limit =
                own.Count == categories.Count ? own[c].Limit
                : own.Count == 0 && categories.Count == 1 ? Nearby(marked, at)
                : null;
            List<string> doubts = own.Count == categories.Count ? [] : ["its limit does not stand in the same line"];
            foreach (string category in categories[c].Categories)
            {
                if (limit is null)
                {
                    lost.Add(category);
                }
                else
                {
                    Add(limits, category, limit, marked[at].Line, doubts);
                }
            }
        }
    }

    private void Add(List<(string Category, Found<string> Limit)> limits, string category, string limit, TextLine line, List<string> doubts)
    {
        int at = limits.FindIndex(l => l.Category == category);
        if (at < 0)
        {
            limits.Add((category, new Found<string>(limit, document, line.Page, line.Box, doubts)));
        }
        else if (limits[at].Limit.Value != limit)
        {
            limits[at] = (category, limits[at].Limit.Doubted($"the certificate also gives {limit} for it"));
        }
    }

    // A list that goes on in the next line takes that line's categories along.
    private static IEnumerable<IfraMark> Whole(List<MarkedLine> marked, int at)
    {
        foreach (IfraMark mark in marked[at].Categories)
        {
            IfraMark whole = mark;
            for (int next = at + 1; whole.IsOpen && next < marked.Count; next++)
            {
                IfraMark? more = marked[next].Categories.FirstOrDefault(m => Math.Abs(m.Frame.Left - mark.Frame.Left) < 2);
                if (more is null || marked[next].Limits.Any())
                {
                    break;
                }

                whole = whole with { Categories = [.. whole.Categories, .. more.Categories], IsOpen = more.IsOpen };
            }

            yield return whole;
        }
    }

    // A limit whose words are parted over lines, or that stands in the middle of a higher row: the lines between the neighbouring
    // categories, read column by column.
    private string? Nearby(List<MarkedLine> marked, int at)
    {
        TextLine own = marked[at].Line;
        double above = Neighbour(marked, at, -1);
        double below = Neighbour(marked, at, 1);
        List<TextLine> near =
        [
            .. marked
                .Where(m => m.Line.Page == own.Page && m.Line.Frame.Bottom > above && m.Line.Frame.Bottom < below)
                .SelectMany(m => m.Line.Phrases()),
        ];
        List<string> found =
        [
            .. near.GroupBy(p => Math.Round(p.Frame.Left))
                .Select(g => marks.LimitIn(string.Join(' ', g.OrderBy(p => p.Frame.Bottom).Select(p => p.Text))))
                .OfType<string>(),
        ];
        return found.Count == 1 ? found[0] : null;
    }

    private static double Neighbour(List<MarkedLine> marked, int at, int step)
    {
        TextLine own = marked[at].Line;
        for (int i = at + step; i >= 0 && i < marked.Count && marked[i].Line.Page == own.Page; i += step)
        {
            if (marked[i].Categories.Any())
            {
                double middle = (own.Frame.Bottom + marked[i].Line.Frame.Bottom) / 2;
                return Math.Abs(middle - own.Frame.Bottom) < RowsApartMm ? middle : own.Frame.Bottom + (step * RowsApartMm);
            }
        }

        return own.Frame.Bottom + (step * RowsApartMm);
    }

    // Categories above their limits: each takes the words that stand nearer to it than to any other.
    private void Across(List<MarkedLine> marked, int at, List<(string, Found<string>)> limits, List<string> lost)
    {
        List<IfraMark> heads = [.. marked[at].Categories.OrderBy(c => c.Frame.CentreX)];
        List<TextLine> below =
        [
            .. marked
                .Skip(at + 1)
                .TakeWhile(m =>
                    !m.Categories.Any(c => heads.Any(h => h.Frame.Left == c.Frame.Left))
                    && m.Line.Page == marked[at].Line.Page
                    && m.Line.Frame.Bottom - marked[at].Line.Frame.Bottom < RowsApartMm
                )
                .Select(m => m.Line),
        ];
        List<Word> words = [.. below.SelectMany(l => l.Words)];
        foreach (IfraMark head in heads)
        {
            string text = string.Join(
                ' ',
                words
                    .Where(w => heads.MinBy(h => Distance(w, h)) == head && Distance(w, head) < RowsApartMm)
                    .OrderBy(w => w.Box.Bottom)
                    .ThenBy(w => w.Box.Left)
                    .Select(w => w.Text)
            );
            string? limit = head.Categories.Count == 1 ? marks.LimitIn(text) : null;
            if (limit is null)
            {
                lost.AddRange(head.Categories);
            }
            else
            {
                Add(limits, head.Categories[0], limit, marked[at].Line, []);
            }
        }
    }

    private static double Distance(Word word, IfraMark head) =>
        Math.Min(Math.Abs(word.Box.Left - head.Frame.Left), Math.Abs(word.Box.CentreX - head.Frame.CentreX));

    private Found<int>? Amendment(IReadOnlyList<TextLine> lines)
    {
        foreach (TextLine line in lines)
        {
            if (amendmentNumber.Match(line.Text) is { Success: true } match)
            {
                int number = int.Parse(match.Groups["n"].Value, CultureInfo.InvariantCulture);
                return new Found<int>(number, document, line.Page, line.Box, []);
            }
        }

        return null;
    }
}

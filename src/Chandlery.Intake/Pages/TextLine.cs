using System.Text.RegularExpressions;

namespace Chandlery.Intake.Pages;

/// <summary>Words on one baseline, from left to right.</summary>
/// <param name="Page">Page number.</param>
/// <param name="Words">The words.</param>
internal sealed partial record TextLine(int Page, IReadOnlyList<Word> Words)
{
    private const double TallestStepMm = 3;

    /// <summary>The words with single blanks.</summary>
    public string Text { get; } = string.Join(' ', Words.Select(w => w.Text));

    /// <summary>Where it stands.</summary>
    public Box Box { get; } = Box.Around(Words.Select(w => w.Box));

    /// <summary>The text without its figures, by which repeated heads and feet are known.</summary>
    public string Shape => Digits().Replace(Text, "#");

    /// <summary>Splits the line where the blank is wider than any blank between words.</summary>
    public IReadOnlyList<TextLine> Phrases()
    {
        var phrases = new List<List<Word>>();
        foreach (Word word in Words)
        {
            if (phrases.Count == 0 || word.Box.Left - phrases[^1][^1].Box.Right > 1.1 * word.TypeSize)
            {
                phrases.Add([]);
            }

            phrases[^1].Add(word);
        }

        return [.. phrases.Select(p => new TextLine(Page, p))];
    }

    /// <summary>The lines of a page from top to bottom.</summary>
    public static IReadOnlyList<TextLine> Of(SheetPage page)
    {
        var lines = new List<List<Word>>();
        foreach (Word word in page.Words.OrderBy(w => w.Box.Bottom).ThenBy(w => w.Box.Left))
        {
            List<Word>? line = null;
            for (int i = lines.Count - 1; i >= 0 && line is null && word.Box.Bottom - lines[i][0].Box.Bottom < TallestStepMm; i--)
            {
                bool same = Math.Abs(lines[i][0].Box.Bottom - word.Box.Bottom) < 0.3 * Math.Min(lines[i][0].TypeSize, word.TypeSize);
                line = same ? lines[i] : null;
            }

            if (line is null)
            {
                lines.Add([word]);
            }
            else
            {
                line.Add(word);
            }
        }

        return [.. lines.Select(l => new TextLine(page.Number, [.. l.OrderBy(w => w.Box.Left)])).OrderBy(l => l.Box.Bottom)];
    }

    /// <summary>The lines of all pages without heads and feet that repeat from page to page.</summary>
    /// <param name="pages">The pages.</param>
    /// <param name="isTableHeading">Tells headings of tables, which repeat too but belong to the table.</param>
    public static IReadOnlyList<TextLine> WithoutFrames(IReadOnlyList<SheetPage> pages, Func<TextLine, bool> isTableHeading)
    {
        List<(SheetPage Page, TextLine Line)> all = [.. pages.SelectMany(p => Of(p).Select(l => (p, l)))];
        if (pages.Count < 2)
        {
            return [.. all.Select(a => a.Line)];
        }

        bool InMargin(SheetPage page, TextLine line) => line.Box.Bottom < 0.13 * page.HeightMm || line.Box.Top > 0.87 * page.HeightMm;
        HashSet<(string, int)> repeated =
        [
            .. all.Where(a => InMargin(a.Page, a.Line) && !isTableHeading(a.Line))
                .GroupBy(a => (a.Line.Shape, (int)Math.Round(a.Line.Box.Bottom / 2)))
                .Where(g => g.Select(a => a.Line.Page).Distinct().Count() >= Math.Max(2, pages.Count * 0.5))
                .Select(g => g.Key),
        ];
        return
        [
            .. all.Where(a => !InMargin(a.Page, a.Line) || !repeated.Contains((a.Line.Shape, (int)Math.Round(a.Line.Box.Bottom / 2))))
                .Select(a => a.Line),
        ];
    }

    [GeneratedRegex(@"[0-9]+")]
    private static partial Regex Digits();
}

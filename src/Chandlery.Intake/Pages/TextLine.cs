using System.Text.RegularExpressions;

namespace Chandlery.Intake.Pages;

/// <summary>Words on one baseline, from left to right.</summary>
/// <param name="Page">Page number.</param>
/// <param name="Words">The words; in a right column of text moved to the left column's place, so that a table may go on there.</param>
/// <param name="ShiftMm">How far the words were moved to the left.</param>
internal sealed partial record TextLine(int Page, IReadOnlyList<Word> Words, double ShiftMm = 0)
{
    private const double TallestStepMm = 3;
    private const double BlankOfTypeSize = 1.1;
    private const double CloseBlankOfTypeSize = 0.5;
    private const double ClearlyWider = 1.8;

    /// <summary>The words with single blanks.</summary>
    public string Text { get; } = string.Join(' ', Words.Select(w => w.Text));

    /// <summary>Where it stands in its column of text.</summary>
    public Box Frame { get; } = Box.Around(Words.Select(w => w.Box));

    /// <summary>Where it stands on the page.</summary>
    public Box Box => Frame with { Left = Frame.Left + ShiftMm, Right = Frame.Right + ShiftMm };

    /// <summary>The text without its figures, by which repeated heads and feet are known.</summary>
    public string Shape => Digits().Replace(Text, "#");

    /// <summary>A line of only these of its words.</summary>
    public TextLine Only(IReadOnlyList<Word> words) => new(Page, words, ShiftMm);

    /// <summary>True when both stand in the same column of text.</summary>
    public bool IsBeside(TextLine other) => Page == other.Page && ShiftMm == other.ShiftMm;

    /// <summary>Splits the line where the blank is wider than any blank between words.</summary>
    public IReadOnlyList<TextLine> Phrases() => Parted(word => BlankOfTypeSize * word.TypeSize);

    /// <summary>Splits the line where the blank is clearly wider than the line's own blanks, as where columns stand close.</summary>
    public IReadOnlyList<TextLine> ClosePhrases()
    {
        double least = Words.Zip(Words.Skip(1), (a, b) => b.Box.Left - a.Box.Right).Where(b => b > 0).DefaultIfEmpty(0).Min();
        return Parted(word => Math.Max(ClearlyWider * least, CloseBlankOfTypeSize * word.TypeSize));
    }

    private IReadOnlyList<TextLine> Parted(Func<Word, double> widest)
    {
        var phrases = new List<List<Word>>();
        foreach (Word word in Words)
        {
            if (phrases.Count == 0 || word.Box.Left - phrases[^1][^1].Box.Right > widest(word))
            {
                phrases.Add([]);
            }

            phrases[^1].Add(word);
        }

        return [.. phrases.Select(p => Only(p))];
    }

    /// <summary>The lines of a page from top to bottom.</summary>
    public static IReadOnlyList<TextLine> Of(int page, IEnumerable<Word> words, double shiftMm = 0)
    {
        var lines = new List<List<Word>>();
        foreach (Word word in words.OrderBy(w => w.Box.Bottom).ThenBy(w => w.Box.Left))
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

        return [.. lines.Select(l => new TextLine(page, [.. l.OrderBy(w => w.Box.Left)], shiftMm)).OrderBy(l => l.Frame.Bottom)];
    }

    [GeneratedRegex(@"[0-9]+")]
    private static partial Regex Digits();
}

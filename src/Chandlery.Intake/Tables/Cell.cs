using Chandlery.Intake.Pages;

namespace Chandlery.Intake.Tables;

/// <summary>A cell: the words of one row in one column.</summary>
/// <param name="Lines">Its lines from top to bottom.</param>
internal sealed record Cell(IReadOnlyList<TextLine> Lines)
{
    private const int LongWord = 16;

    /// <summary>
    /// Its text with wrapped lines joined: a hyphen at a line's end, or at its start after a figure or between a letter and a figure
    /// ("methylheptan" over "-3-one"), stays and takes no blank.
    /// </summary>
    public string Text { get; } = Join(Lines, " ");

    /// <summary>The same with a line feed where a line ends that does not end in a hyphen.</summary>
    public string LinedText => Join(Lines, "\n");

    /// <summary>True when a line ends in a hyphen after a letter, so that nobody knows whether the hyphen belongs to the word.</summary>
    public bool HasSplitWord => Lines.SkipLast(1).Any(l => l.Text is [.., var before, '-'] && char.IsLetter(before)) || HasBrokenWord;

    // A long word that fills its line may go on in the next without any hyphen.
    private bool HasBrokenWord =>
        Lines.Zip(Lines.Skip(1)).Any(p => p.First.Words[^1].Text.Length >= LongWord && char.IsLower(p.Second.Text[0]));

    /// <summary>Where it stands; null when it is empty.</summary>
    public Box? Box => Lines.Count == 0 ? null : Pages.Box.Around(Lines.Select(l => l.Box));

    private static string Join(IReadOnlyList<TextLine> lines, string between)
    {
        string text = "";
        foreach (TextLine line in lines)
        {
            bool begins =
                text.Length > 0
                && line.Text is ['-', var after, ..]
                && (
                    (char.IsAsciiDigit(text[^1]) && char.IsAsciiLetterOrDigit(after))
                    || (char.IsLetter(text[^1]) && char.IsAsciiDigit(after))
                );
            bool hyphen =
                begins
                || text is [.., var before, '-']
                    && char.IsLetterOrDigit(before)
                    && line.Text.Length > 0
                    && char.IsLetterOrDigit(line.Text[0]);
            text = text.Length == 0 || hyphen ? text + line.Text : text + between + line.Text;
        }

        return text;
    }
}

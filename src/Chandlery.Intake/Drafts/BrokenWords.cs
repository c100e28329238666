using Chandlery.Intake.Pages;

namespace Chandlery.Intake.Drafts;

/// <summary>Words that a narrow column breaks without any mark.</summary>
internal static class BrokenWords
{
    private const double LetterOfTypeSize = 0.6;
    private const int Shortest = 12;

    /// <summary>A narrow column breaks a word that does not fit wherever its line is full, without any mark.</summary>
    public static bool IsBroken(TextLine line, TextLine next, double edge) =>
        line.Frame.Right > edge - (LetterOfTypeSize * line.Words[^1].TypeSize)
        && char.IsLetter(line.Text[^1])
        && char.IsLower(next.Text[0]);

    /// <summary>A word that is alone in a full line was too long for its column and goes on in the next; others were parted at a blank.</summary>
    public static IReadOnlyList<TextLine> Unbroken(IReadOnlyList<TextLine> lines, double edge)
    {
        var whole = new List<TextLine>();
        TextLine? last = null;
        foreach (TextLine line in lines)
        {
            bool goesOn = last is { Words.Count: 1 } && last.Text.Length >= Shortest && line.IsBeside(last) && IsBroken(last, line, edge);
            if (goesOn)
            {
                Word first = whole[^1].Words[^1];
                Word rest = line.Words[0];
                whole[^1] = line.Only([
                    .. whole[^1].Words.SkipLast(1),
                    first with
                    {
                        Text = first.Text + rest.Text,
                        Box = first.Box.Around(rest.Box),
                    },
                    .. line.Words.Skip(1),
                ]);
            }
            else
            {
                whole.Add(line);
            }

            last = line;
        }

        return whole;
    }
}

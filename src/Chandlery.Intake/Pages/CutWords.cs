namespace Chandlery.Intake.Pages;

/// <summary>Marks words that run over the page's edge, of which a reader of the page sees only a part.</summary>
internal static class CutWords
{
    /// <summary>Stands for what cannot be seen of a word.</summary>
    public const char Unseen = '\ufffd';

    private const double SameLineOfSize = 0.15;
    private const double WidestBlankOfSize = 1.5;
    private const double DescentOfSize = 0.2;
    private const int MostLetters = 500;

    /// <summary>True when a part of the word cannot be seen.</summary>
    public static bool IsCut(Word word) => word.Text.Contains(Unseen, StringComparison.Ordinal);

    /// <summary>The words, those with a mark that stand right before or behind letters beyond the edge.</summary>
    /// <param name="words">Words of the page.</param>
    /// <param name="beyond">Letters that stand beyond its edge, or across it.</param>
    /// <param name="mmPerUnit">Millimetres of the letters' unit.</param>
    public static IReadOnlyList<Word> Marked(IReadOnlyList<Word> words, IEnumerable<PlacedLetter> beyond, double mmPerUnit)
    {
        HashSet<Word> cut = [.. beyond.Take(MostLetters).Select(letter => Nearest(words, letter, mmPerUnit)).OfType<Word>()];
        return cut.Count == 0 ? words : [.. words.Select(w => cut.Contains(w) ? w with { Text = w.Text + Unseen } : w)];
    }

    /// <summary>Lines of words that go on beyond the page's edge, from the page's left edge to its right one, so that a column may be missing.</summary>
    /// <param name="words">Words of the page.</param>
    /// <param name="beyond">Letters that stand beyond its edge, or across it.</param>
    /// <param name="mmPerUnit">Millimetres of the letters' unit.</param>
    /// <param name="widthMm">The page's width.</param>
    public static IReadOnlyList<Box> Lines(IReadOnlyList<Word> words, IEnumerable<PlacedLetter> beyond, double mmPerUnit, double widthMm) =>
        [
            .. beyond
                .Take(MostLetters)
                .Where(letter => Nearest(words, letter, mmPerUnit) is null)
                .Select(letter => words.FirstOrDefault(w => IsLevel(w, letter, mmPerUnit)))
                .OfType<Word>()
                .Select(w => new Box(0, w.Box.Top, widthMm, w.Box.Bottom))
                .Distinct(),
        ];

    private static bool IsLevel(Word word, PlacedLetter letter, double mmPerUnit) =>
        Math.Abs(word.Box.Bottom - (DescentOfSize * word.TypeSize) - (letter.Baseline * mmPerUnit))
        < SameLineOfSize * letter.Size * mmPerUnit;

    private static Word? Nearest(IReadOnlyList<Word> words, PlacedLetter letter, double mmPerUnit)
    {
        double size = letter.Size * mmPerUnit;
        double Blank(Word word) => Math.Max((letter.Left * mmPerUnit) - word.Box.Right, word.Box.Left - (letter.Right * mmPerUnit));
        return words.Where(w => IsLevel(w, letter, mmPerUnit) && Blank(w) < WidestBlankOfSize * size).MinBy(w => Math.Abs(Blank(w)));
    }
}

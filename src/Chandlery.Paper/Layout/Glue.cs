namespace Chandlery.Paper.Layout;

/// <summary>
/// Which words must not be torn apart at a line's end: figures and their units, telephone numbers, house numbers, postcodes, and the marks
/// that some languages set apart from their word.
/// </summary>
internal static class Glue
{
    /// <summary>Whether two neighbouring words stay on one line.</summary>
    /// <param name="word">A word.</param>
    /// <param name="next">The word behind it.</param>
    /// <param name="afterNext">The word behind that one; empty at the end.</param>
    public static bool Holds(string word, string next, string afterNext) =>
        IsFigure(word) && !next.StartsWith('(') && next is not ("·" or "/")
        || IsSign(word)
        || IsMark(next)
        || word is "«"
        || EndsAddress(next, afterNext) && word.Length > 0 && char.IsLetter(word[^1]);

    // "10" before "cm", "+999" before "20", "12345" before a town.
    private static bool IsFigure(string word) => word.Length > 0 && char.IsAsciiDigit(word[^1]) && word.Any(char.IsAsciiDigit);

    // "≥" before its figure.
    private static bool IsSign(string word) => word is "≥" or "≤" or "<" or ">" or "(≤" or "(≥" or "±" or "–";

    // "chaude" before ":" in French.
    private static bool IsMark(string next) => next is ":" or ";" or "?" or "!" or "»";

    // "Kelp Lane" before "3," or a "3" that ends the text.
    private static bool EndsAddress(string next, string afterNext) =>
        next.Length is > 0 and <= 5
        && char.IsAsciiDigit(next[0])
        && (next[^1] == ',' || (afterNext.Length == 0 && char.IsAsciiDigit(next[^1])));
}

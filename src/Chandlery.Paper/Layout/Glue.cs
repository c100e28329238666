namespace Chandlery.Paper.Layout;

/// <summary>
/// Which words must not be torn apart at a line's end: figures and their units, telephone numbers, house numbers, postcodes, hazard classes
/// with their category and statement, and the marks that some languages set apart from their word.
/// </summary>
internal static class Glue
{
    // The words of CLP's class abbreviations that stand behind another one, and those before a category (Annex VI, Table 1.1).
    private static readonly HashSet<string> InsideClass =
    [
        "Liq.",
        "Tox.",
        "Corr.",
        "Irrit.",
        "Dam.",
        "Sens.",
        "SE",
        "RE",
        "Acute",
        "Chronic",
    ];
    private static readonly HashSet<string> BeforeCategory = [.. InsideClass, "Carc.", "Muta.", "Repr.", "Lact.", "Ozone"];

    /// <summary>Whether two neighbouring words stay on one line.</summary>
    /// <param name="word">A word.</param>
    /// <param name="next">The word behind it.</param>
    /// <param name="afterNext">The word behind that one; empty at the end.</param>
    public static bool Holds(string word, string next, string afterNext) =>
        IsFigure(word) && !next.StartsWith('(') && next is not ("·" or "/")
        || IsSign(word)
        || IsMark(next)
        || word is "«" or "="
        || next is "="
        || (word is "M" && next is ['(', ..])
        || (word is "C" && IsSign(next))
        || IsClass(word, next, afterNext)
        || EndsAddress(next, afterNext) && word.Length > 0 && char.IsLetter(word[^1]);

    // "10" before "cm", "+999" before "20", "12345" before a town.
    private static bool IsFigure(string word) => word.Length > 0 && char.IsAsciiDigit(word[^1]) && word.Any(char.IsAsciiDigit);

    // "Skin" before "Sens. 1B,", that before its category, and the category before "H317".
    private static bool IsClass(string word, string next, string afterNext) =>
        (IsCategory(next) && BeforeCategory.Contains(word))
        || (IsCategory(afterNext) && InsideClass.Contains(next))
        || (IsCategory(word) && word[^1] == ',' && next is ['H', >= '2' and <= '4', ..]);

    private static bool IsCategory(string word) => word is [>= '1' and <= '4', ..] && word.Length <= 3;

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

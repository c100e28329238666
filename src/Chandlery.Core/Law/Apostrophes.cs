using System.Text.RegularExpressions;

namespace Chandlery.Core.Law;

/// <summary>Apostrophes and single quotation marks as a typesetter has them, where a text was typed with the straight sign of keyboards.</summary>
public static partial class Apostrophes
{
    /// <summary>
    /// The text with curved signs. The straight one stays where it is the prime of a chemical name, such as in
    /// <c>N,N'-dimethyl</c> and <c>4,4'-methylenedianiline</c>.
    /// </summary>
    public static string In(string text) =>
        text.Contains('\'', StringComparison.Ordinal) ? Single().Replace(Pair().Replace(text, "‘$1’"), "’") : text;

    [GeneratedRegex(@"(?<![\p{L}\p{N}])'(?=\S)([^']*)(?<=\S)'(?!\p{L})")]
    private static partial Regex Pair();

    // In a word, or behind one.
    [GeneratedRegex(@"(?<=\p{L})'(?=\p{L}| \p{Ll})")]
    private static partial Regex Single();
}

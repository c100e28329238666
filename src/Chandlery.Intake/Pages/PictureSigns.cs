using System.Globalization;
using System.Text.RegularExpressions;

namespace Chandlery.Intake.Pages;

/// <summary>
/// Puts right the signs "not less" and "not more", which the recognition of pictures takes for a 2 and an s. It is done only where the text
/// would make no sense otherwise, and every value of such a page is doubted all the same.
/// </summary>
internal static partial class PictureSigns
{
    /// <summary>The text with its signs; as long as before.</summary>
    public static string Mended(string text) => NotMore().Replace(NotLess().Replace(text, Sign), "≤");

    // A range's low end that is above its high end, and would not be without its first figure.
    private static string Sign(Match match)
    {
        double low = Number(match.Groups["low"].Value);
        double high = Number(match.Groups["high"].Value);
        return Number("2" + match.Groups["low"].Value) > high && low < high ? "≥" + match.Value[1..] : match.Value;
    }

    private static double Number(string text) => double.Parse(text.Replace(',', '.'), CultureInfo.InvariantCulture);

    [GeneratedRegex(
        @"(?<![0-9.,<>≥≤-])2(?<low>[0-9]{1,2}(?:[.,][0-9]{1,4})?)\s*[-\u2013]\s*[<≤]?\s*(?<high>[0-9]{1,3}(?:[.,][0-9]{1,4})?)(?![0-9.,-])"
    )]
    private static partial Regex NotLess();

    [GeneratedRegex(@"(?<!\S)[sS](?=\s?[0-9]{1,3}(?:[.,][0-9]{1,4})?\s?%?(?:\s|$))")]
    private static partial Regex NotMore();
}

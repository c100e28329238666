using Chandlery.Core.Declared;
using Chandlery.Yaml;

namespace Chandlery.Intake.Wording;

/// <summary>Reads shares in the many ways that sheets print them.</summary>
internal static class ShareText
{
    /// <summary>
    /// The share in the form that declarations use; refused when the text is no share. Signs and figures stay as
    /// printed; only words become signs (<c>1 to 5</c>, <c>max. 2</c>) and decimal commas become points.
    /// </summary>
    public static Parsed<string> Parse(string text, SheetWording wording)
    {
        string plain = text.Trim().ToLowerInvariant();
        foreach ((string word, string sign) in wording.RangeWords.OrderByDescending(w => w.Key.Length))
        {
            int at = Phrase.IndexOf(word, plain);
            plain = at < 0 ? plain : plain[..at] + sign + plain[(at + word.Length)..];
        }

        plain = plain
            .Replace("(w/w)", "", StringComparison.Ordinal)
            .Replace("w/w", "", StringComparison.Ordinal)
            .Replace("gew.-%", "", StringComparison.Ordinal)
            .Replace("wt%", "", StringComparison.Ordinal)
            .Replace("wt.%", "", StringComparison.Ordinal)
            .Replace("...", "-", StringComparison.Ordinal)
            .Replace("%", "", StringComparison.Ordinal)
            .Trim();
        return DeclaredRange.Parse(plain).Reason is { } wrong
            ? Parsed.Not<string>(wrong)
            : Parsed.As(
                string.Join(' ', plain.Replace(',', '.').Replace('\u2013', '-').Split(' ', StringSplitOptions.RemoveEmptyEntries)) + " %"
            );
    }
}

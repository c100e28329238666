using System.Globalization;
using System.Text.RegularExpressions;
using Chandlery.Yaml;

namespace Chandlery.Intake.Wording;

/// <summary>Reads dates in the ways that sheets print them.</summary>
internal static partial class DateText
{
    /// <summary>The first date in the text; null when there is none.</summary>
    public static PrintedDay? Find(string text, SheetWording wording)
    {
        if (Iso().Match(text) is { Success: true } iso)
        {
            return Day(iso.Groups["y"].Value, iso.Groups["m"].Value, iso.Groups["d"].Value);
        }

        if (Named().Match(text) is { Success: true } named && MonthOf(named.Groups["m"].Value, wording) is { } month)
        {
            return Day(named.Groups["y"].Value, month.ToString(CultureInfo.InvariantCulture), named.Groups["d"].Value);
        }

        if (NamedFirst().Match(text) is { Success: true } first && MonthOf(first.Groups["m"].Value, wording) is { } firstMonth)
        {
            return Day(first.Groups["y"].Value, firstMonth.ToString(CultureInfo.InvariantCulture), first.Groups["d"].Value);
        }

        if (Figures().Match(text) is not { Success: true } figures)
        {
            return null;
        }

        int a = int.Parse(figures.Groups["a"].Value, CultureInfo.InvariantCulture);
        int b = int.Parse(figures.Groups["b"].Value, CultureInfo.InvariantCulture);
        bool dots = figures.Groups["sep"].Value == ".";
        string? doubt =
            a <= 12 && b <= 12 && a != b && !dots ? $"'{figures.Value}' could be day/month or month/day; it was read as day/month" : null;
        bool monthFirst = b > 12 && a <= 12;
        return Day(
            figures.Groups["y"].Value,
            (monthFirst ? a : b).ToString(CultureInfo.InvariantCulture),
            (monthFirst ? b : a).ToString(CultureInfo.InvariantCulture),
            doubt
        );
    }

    /// <summary>True when the text begins with a date; "of first issue: 2020-01-01" does not.</summary>
    public static bool IsAtStart(string text, SheetWording wording) =>
        Find(text, wording) is not null
        && (char.IsAsciiDigit(text[0]) || MonthOf(new string([.. text.TakeWhile(char.IsLetter)]), wording) is not null);

    private static int? MonthOf(string name, SheetWording wording)
    {
        string plain = name.ToLowerInvariant();
        foreach (IReadOnlyList<string> months in wording.Months)
        {
            for (int i = 0; i < months.Count; i++)
            {
                if (months[i] == plain || (plain.Length >= 3 && months[i].StartsWith(plain, StringComparison.Ordinal)))
                {
                    return i + 1;
                }
            }
        }

        return null;
    }

    private static PrintedDay? Day(string year, string month, string day, string? doubt = null) =>
        IsoDay.Parse($"{year}-{month.PadLeft(2, '0')}-{day.PadLeft(2, '0')}") is var read && read.Success
            ? new PrintedDay(read.Value, doubt)
            : null;

    [GeneratedRegex(@"(?<y>[0-9]{4})-(?<m>[0-9]{1,2})-(?<d>[0-9]{1,2})")]
    private static partial Regex Iso();

    [GeneratedRegex(@"(?<d>[0-9]{1,2})(?:st|nd|rd|th|er|\.)?[\s-]+(?<m>\p{L}{3,})\.?[\s,-]+(?<y>[0-9]{4})")]
    private static partial Regex Named();

    [GeneratedRegex(@"(?<m>\p{L}{3,})\.?\s+(?<d>[0-9]{1,2})(?:st|nd|rd|th)?,?\s+(?<y>[0-9]{4})")]
    private static partial Regex NamedFirst();

    [GeneratedRegex(@"(?<a>[0-9]{1,2})(?<sep>[./])(?<b>[0-9]{1,2})[./](?<y>[0-9]{4})")]
    private static partial Regex Figures();
}

using System.Globalization;
using System.Text.RegularExpressions;

namespace Chandlery.Workbench.Desks;

/// <summary>Codes of batches, counted up.</summary>
internal static partial class BatchCodes
{
    /// <summary>The next code: the candle's first letters, year and month, and the number within them.</summary>
    /// <param name="candle">The candle's trade name.</param>
    /// <param name="known">Codes that batches have.</param>
    /// <param name="day">The day of pouring.</param>
    public static string Next(string candle, IReadOnlyCollection<string> known, DateOnly day)
    {
        string letters = string.Concat(Words().Matches(candle).Select(m => char.ToUpperInvariant(m.Value[0])).Take(3));
        string start = string.Create(CultureInfo.InvariantCulture, $"{(letters.Length == 0 ? "B" : letters)}-{day:yyMM}-");
        int last = known
            .Where(c => c.StartsWith(start, StringComparison.OrdinalIgnoreCase))
            .Select(c => int.TryParse(c[start.Length..], NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : 0)
            .DefaultIfEmpty()
            .Max();
        return string.Create(CultureInfo.InvariantCulture, $"{start}{last + 1:00}");
    }

    [GeneratedRegex(@"\p{L}+")]
    private static partial Regex Words();
}

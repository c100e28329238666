using System.Globalization;

namespace Chandlery.Yaml;

/// <summary>Days as declarations, options and requests write them: year-month-day (ISO 8601).</summary>
public static class IsoDay
{
    private const string Form = "yyyy-MM-dd";

    /// <summary>Reads a day such as 2026-11-25; false when the text is none.</summary>
    public static bool TryParse(string? text, out DateOnly day) =>
        DateOnly.TryParseExact(text, Form, CultureInfo.InvariantCulture, DateTimeStyles.None, out day);

    /// <summary>Writes a day such as 2026-11-25.</summary>
    public static string Plain(DateOnly day) => day.ToString(Form, CultureInfo.InvariantCulture);
}

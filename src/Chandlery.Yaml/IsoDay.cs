using System.Globalization;

namespace Chandlery.Yaml;

/// <summary>Days as declarations, options and requests write them: year-month-day (ISO 8601).</summary>
public static class IsoDay
{
    private const string Form = "yyyy-MM-dd";

    /// <summary>Reads a day such as 2026-11-25; refused when the text is none.</summary>
    public static Parsed<DateOnly> Parse(string? text) =>
        DateOnly.TryParseExact(text, Form, CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day)
            ? Parsed.As(day)
            : Parsed.Not<DateOnly>($"'{text}' is not a day.");

    /// <summary>Writes a day such as 2026-11-25.</summary>
    public static string Plain(DateOnly day) => day.ToString(Form, CultureInfo.InvariantCulture);
}

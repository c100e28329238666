using System.Globalization;

namespace Chandlery.Sheets.Wild;

/// <summary>A share of a random sheet, percent; an exact figure when both ends are the same.</summary>
/// <param name="Low">Low end.</param>
/// <param name="High">High end.</param>
/// <param name="IsOpen">True when the high end itself is outside.</param>
public sealed record WildShare(double Low, double High, bool IsOpen)
{
    private static readonly double[] Steps = [0.01, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 3, 5, 7, 10, 15, 20, 25, 30, 40, 50];

    public bool IsExact => Low == High;

    public static WildShare Any(Random dice, bool rangesOnly)
    {
        int at = dice.Next(Steps.Length - 3);
        return dice.Next(rangesOnly ? 4 : 7) switch
        {
            4 => Exact(Math.Round(Steps[at] * (1 + dice.NextDouble()), 3)),
            5 => new WildShare(0, Steps[at], true),
            6 => new WildShare(0, Steps[at], false),
            var n => new WildShare(Steps[at], Steps[at + 1 + dice.Next(2)], n < 2),
        };
    }

    private static WildShare Exact(double value) => new(value, value, false);

    /// <summary>The share as a style of sheets prints it.</summary>
    public string Print(int style, WildWords words)
    {
        string low = Figure(Low, IsExact ? 0 : style, words);
        string high = Figure(High, style, words);
        if (IsExact)
        {
            return style is 1 or 6 ? low + " %" : low;
        }

        if (Low == 0)
        {
            return style switch
            {
                1 => $"{(IsOpen ? "<" : "≤")} {high} %",
                3 => $"x {(IsOpen ? "<" : "≤")} {high}",
                4 => $"{(IsOpen ? "<" : "<=")}{high}",
                _ => $"{(IsOpen ? "<" : "≤")} {high}",
            };
        }

        string open = IsOpen ? "< " : "";
        return style switch
        {
            1 => IsOpen ? $"≥ {low} – < {high} %" : $"{low} – {high} %",
            2 => IsOpen ? $"≥{low}-<{high}" : $"{low}-{high}",
            3 => $"{low} ≤ x {(IsOpen ? "<" : "≤")} {high}",
            4 => IsOpen ? $">={low} - <{high}" : $">={low} - <={high}",
            5 => $"{low} – {open}{high}",
            6 => IsOpen ? $"≥ {low} -\n< {high} %" : $"{low} {words.First("to")} {high} %",
            7 => $"{low} - {open}{high}",
            _ => $"{low}% - {open}{high}%",
        };
    }

    public string Ppm() =>
        IsExact ? Plain(Low * 10000)
        : Low == 0 ? $"{(IsOpen ? "<" : "<=")} {Plain(High * 10000)}"
        : $"{Plain(Low * 10000)} - {(IsOpen ? "<" : "")}{Plain(High * 10000)}";

    public static string Figure(double value, int style, WildWords words)
    {
        string text = style == 7 && value >= 1 ? value.ToString("0.0", CultureInfo.InvariantCulture) : Plain(value);
        return words.HasDecimalComma ? text.Replace('.', ',') : text;
    }

    private static string Plain(double value) => Math.Round(value, 6).ToString(CultureInfo.InvariantCulture);
}

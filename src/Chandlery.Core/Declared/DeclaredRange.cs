using System.Globalization;
using System.Text.RegularExpressions;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>A concentration as a supplier's sheet prints it: an exact figure, a range, or an upper or lower bound.</summary>
/// <remarks>
/// An open end (<c>&lt; 25 %</c>) is read as that very figure: the true share may come as close to it as you like, and
/// classification on the high end must not profit from the difference. A missing lower end is 0. A missing upper end
/// is 100 until the other lines of the same sheet narrow it (see <see cref="OpenAbove"/>).
/// </remarks>
public sealed partial record DeclaredRange
{
    private DeclaredRange(MassPercent low, MassPercent high, bool openAbove, string printed)
    {
        Low = low;
        High = high;
        OpenAbove = openAbove;
        Printed = printed;
    }

    /// <summary>Low end, percent by mass of the product the sheet is about.</summary>
    public MassPercent Low { get; }

    /// <summary>High end, percent by mass; above 0, at most 100, and never below <see cref="Low"/>.</summary>
    public MassPercent High { get; }

    /// <summary>True when the sheet gives no upper end.</summary>
    public bool OpenAbove { get; }

    /// <summary>The text as printed.</summary>
    public string Printed { get; }

    /// <summary>An exact figure.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is not above 0, or above 100.</exception>
    public static DeclaredRange Exactly(double percent) =>
        percent is > 0 and <= 100
            ? new DeclaredRange(new MassPercent(percent), new MassPercent(percent), false, Figures.Plain(percent) + " %")
            : throw new ArgumentOutOfRangeException(nameof(percent), percent, "A share is above 0 and at most 100 percent.");

    /// <summary>Reads a range; refused when the text cannot be one.</summary>
    public static Parsed<DeclaredRange> Parse(string text)
    {
        string plain = Normalise(text);
        if (Between().Match(plain) is { Success: true } between)
        {
            return Number(between, "low") is var low && Number(between, "high") is var high && low.Success && high.Success
                ? Checked(low.Value, high.Value, false, text)
                : Parsed.Not<DeclaredRange>((low.Reason ?? high.Reason)!);
        }

        if (Bound().Match(plain) is { Success: true } bound)
        {
            Parsed<double> end = Number(bound, "value");
            return !end.Success ? Parsed.Not<DeclaredRange>(end.Reason)
                : bound.Groups["sign"].Value is "<" or "<=" ? Checked(0, end.Value, false, text)
                : Checked(end.Value, 100, true, text);
        }

        if (Exact().Match(plain) is { Success: true } exact)
        {
            Parsed<double> figure = Number(exact, "value");
            return figure.Success ? Checked(figure.Value, figure.Value, false, text) : Parsed.Not<DeclaredRange>(figure.Reason);
        }

        return Parsed.Not<DeclaredRange>(
            $"'{text}' is not a share: write it as the sheet does, such as '2.5', '10 - <25 %', '<= 1' or '>=0.1-<1'."
        );
    }

    private static Parsed<DeclaredRange> Checked(double low, double high, bool openAbove, string text)
    {
        string? wrong =
            low > high ? $"the share '{text}' runs backwards: its low end {Figures.Plain(low)} is above its high end {Figures.Plain(high)}."
            : high > 100 ? $"the share '{text}' is over 100 %."
            : high == 0 ? $"the share '{text}' is nothing at all: leave the line out, or give the figure of the sheet."
            : null;
        return wrong is null
            ? Parsed.As(new DeclaredRange(new MassPercent(low), new MassPercent(high), openAbove, text.Trim()))
            : Parsed.Not<DeclaredRange>(wrong);
    }

    private static string Normalise(string text) =>
        text.Trim()
            .Replace("%", "", StringComparison.Ordinal)
            .Replace('\u2013', '-')
            .Replace('\u2014', '-')
            .Replace("\u2264", "<=", StringComparison.Ordinal)
            .Replace("\u2265", ">=", StringComparison.Ordinal)
            .Replace('\u00a0', ' ')
            .Trim();

    private static Parsed<double> Number(Match match, string group)
    {
        string text = match.Groups[group].Value;
        return Thousands().IsMatch(text)
            ? Parsed.Not<double>($"'{text}' could be a decimal or a thousand: write it with a decimal point.")
            : Parsed.As(double.Parse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture));
    }

    [GeneratedRegex(@"^(?:>=|>)?\s*(?<low>[0-9]+(?:[.,][0-9]+)?)\s*(?:-|to|,?\s*(?=<))\s*(?:<=|<)?\s*(?<high>[0-9]+(?:[.,][0-9]+)?)$")]
    private static partial Regex Between();

    [GeneratedRegex(@"^(?<sign><=|>=|<|>)\s*(?<value>[0-9]+(?:[.,][0-9]+)?)$")]
    private static partial Regex Bound();

    [GeneratedRegex(@"^(?<value>[0-9]+(?:[.,][0-9]+)?)$")]
    private static partial Regex Exact();

    [GeneratedRegex(@"^[1-9][0-9]*,[0-9]{3}$")]
    private static partial Regex Thousands();
}

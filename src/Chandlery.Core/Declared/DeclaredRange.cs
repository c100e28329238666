using System.Globalization;
using System.Text.RegularExpressions;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>A concentration as a supplier's sheet prints it: an exact figure, a range, or an upper or lower bound.</summary>
/// <remarks>
/// An open end (<c>&lt; 25 %</c>) is read as that very figure: the true share may come as close to it as you like, and
/// classification on the high end must not profit from the difference. A missing lower end is 0. A missing upper end
/// is 100 until the other lines of the same sheet narrow it (see <see cref="OpenAbove"/>).
/// </remarks>
/// <param name="Low">Low end, percent by mass of the product the sheet is about.</param>
/// <param name="High">High end, percent by mass.</param>
/// <param name="OpenAbove">True when the sheet gives no upper end.</param>
/// <param name="Printed">The text as printed.</param>
public sealed partial record DeclaredRange(MassPercent Low, MassPercent High, bool OpenAbove, string Printed)
{
    /// <summary>An exact figure.</summary>
    public static DeclaredRange Exactly(double percent) =>
        new(new MassPercent(percent), new MassPercent(percent), false, Figures.Plain(percent) + " %");

    /// <summary>Reads a range; null when it cannot be one, with the reason in <paramref name="why"/>.</summary>
    public static DeclaredRange? TryParse(string text, out string why)
    {
        string plain = Normalise(text);
        Match match = Between().Match(plain);
        double low;
        double high;
        bool openAbove = false;
        if (match.Success)
        {
            if (!Number(match, "low", out low, out why) || !Number(match, "high", out high, out why))
            {
                return null;
            }
        }
        else if ((match = Bound().Match(plain)).Success)
        {
            if (!Number(match, "value", out double value, out why))
            {
                return null;
            }

            bool upper = match.Groups["sign"].Value is "<" or "<=";
            low = upper ? 0 : value;
            high = upper ? value : 100;
            openAbove = !upper;
        }
        else if ((match = Exact().Match(plain)).Success)
        {
            if (!Number(match, "value", out low, out why))
            {
                return null;
            }

            high = low;
        }
        else
        {
            why = $"'{text}' is not a share: write it as the sheet does, such as '2.5', '10 - <25 %', '<= 1' or '>=0.1-<1'.";
            return null;
        }

        if (low > high)
        {
            why = $"the share '{text}' runs backwards: its low end {Figures.Plain(low)} is above its high end {Figures.Plain(high)}.";
            return null;
        }

        if (high > 100)
        {
            why = $"the share '{text}' is over 100 %.";
            return null;
        }

        if (high == 0)
        {
            why = $"the share '{text}' is nothing at all: leave the line out, or give the figure of the sheet.";
            return null;
        }

        why = "";
        return new DeclaredRange(new MassPercent(low), new MassPercent(high), openAbove, text.Trim());
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

    private static bool Number(Match match, string group, out double value, out string why)
    {
        string text = match.Groups[group].Value;
        why = "";
        if (Thousands().IsMatch(text))
        {
            value = 0;
            why = $"'{text}' could be a decimal or a thousand: write it with a decimal point.";
            return false;
        }

        return double.TryParse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value);
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

using System.Globalization;

namespace Chandlery.Core.Quantities;

/// <summary>How figures are written for whoever works with the program, with a decimal point; papers write theirs by <see cref="FigureFormat"/>.</summary>
public static class Figures
{
    /// <summary>At most four significant figures, no exponent for everyday sizes.</summary>
    public static string Plain(double value)
    {
        if (value == 0 || double.IsNaN(value) || double.IsInfinity(value))
        {
            return value.ToString(CultureInfo.InvariantCulture);
        }

        double magnitude = Math.Floor(Math.Log10(Math.Abs(value)));
        int decimals = (int)Math.Clamp(3 - magnitude, 0, 12);
        return Math.Round(value, decimals).ToString("0.############", CultureInfo.InvariantCulture);
    }

    /// <summary>At most so many decimals, and at most four significant figures.</summary>
    public static string Rounded(double value, int decimals) => Plain(Math.Round(value, decimals));
}

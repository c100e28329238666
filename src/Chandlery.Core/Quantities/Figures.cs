using System.Globalization;

namespace Chandlery.Core.Quantities;

/// <summary>How figures are written for whoever works with the program, with a decimal point; papers write theirs by <see cref="FigureFormat"/>.</summary>
public static class Figures
{
    /// <summary>At most four significant figures, no exponent for everyday sizes.</summary>
    public static string Plain(double value) =>
        double.IsNaN(value) || double.IsInfinity(value)
            ? value.ToString(CultureInfo.InvariantCulture)
            : Significant(value).ToString("0.############", CultureInfo.InvariantCulture);

    /// <summary>A figure with at most four significant figures and twelve decimals, as <see cref="Plain"/> writes it.</summary>
    public static double Significant(double value) =>
        value == 0 ? value : Math.Round(value, (int)Math.Clamp(3 - Math.Floor(Math.Log10(Math.Abs(value))), 0, 12));

    /// <summary>At most so many decimals, and at most four significant figures.</summary>
    public static string Rounded(double value, int decimals) => Plain(Math.Round(value, decimals));
}

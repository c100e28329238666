using System.Globalization;

namespace Chandlery.Core.Quantities;

/// <summary>How figures are written for people: the same everywhere, with a decimal point.</summary>
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

    /// <summary>Like <see cref="Plain"/>, but never below the value: for the high end of a range.</summary>
    public static string PlainUp(double value)
    {
        string plain = Plain(value);
        if (value <= 0 || double.Parse(plain, CultureInfo.InvariantCulture) >= value * (1 - MassPercent.RelativeTolerance))
        {
            return plain;
        }

        double step = Math.Pow(10, Math.Floor(Math.Log10(value)) - 3);
        return Plain(double.Parse(plain, CultureInfo.InvariantCulture) + step);
    }
}

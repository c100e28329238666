using System.Globalization;

namespace Chandlery.Core.Quantities;

/// <summary>
/// How papers write figures: the one place where they are rounded, with a language's decimal mark. Computed shares have at most
/// three significant figures, rounded to the side that says more of a substance, never less.
/// </summary>
/// <param name="DecimalMark">What stands between whole and parts.</param>
public sealed record FigureFormat(char DecimalMark)
{
    private const int SignificantFigures = 3;
    private const int MostDecimals = 12;

    // The avoirdupois ounce, exactly (NIST Special Publication 811, appendix B.8).
    private const double GramsPerOunce = 28.349523125;

    /// <summary>With a decimal point, as the program's own sentences write figures.</summary>
    public static FigureFormat English { get; } = new('.');

    /// <summary>A figure that somebody declared or the law sets: as it is, in any unit.</summary>
    public string Declared(double value) => Marked(Figures.Plain(value));

    /// <summary>A figure of a column whose tenths stand below each other: rounded to the nearest tenth, which is always written.</summary>
    public string Tenth(double value) => Marked(value.ToString("0.0", CultureInfo.InvariantCulture));

    /// <summary>A mass in ounces, without their sign: to the tenth, rounded down so that a label promises no more than is there.</summary>
    public string Ounces(Grams mass) => Tenth(Math.Floor(mass.Value / GramsPerOunce * 10) / 10);

    /// <summary>The high end of a computed share, with its sign: never below the share.</summary>
    public string AtMost(MassPercent share) => $"{AtMostFigure(share)} %";

    /// <summary>Like <see cref="AtMost"/>, without the sign.</summary>
    public string AtMostFigure(MassPercent share) =>
        Rounded(share.Value, steps => Math.Ceiling(steps * (1 - MassPercent.RelativeTolerance)));

    /// <summary>The low end of a computed share without its sign: never above the share.</summary>
    public string AtLeastFigure(MassPercent share) =>
        Rounded(share.Value, steps => Math.Floor(steps * (1 + MassPercent.RelativeTolerance)));

    /// <summary>A computed share that is neither end of a range, such as a load, with its sign: rounded to the nearest.</summary>
    public string About(MassPercent share) => $"{Rounded(share.Value, Math.Round)} %";

    private string Rounded(double value, Func<double, double> round)
    {
        if (value == 0)
        {
            return "0";
        }

        int magnitude = (int)Math.Floor(Math.Log10(Math.Abs(value)));
        int decimals = Math.Clamp(SignificantFigures - 1 - magnitude, 0, MostDecimals);
        double stepsInOne = Math.Pow(10, decimals);
        double rounded = Math.Round(round(value * stepsInOne) / stepsInOne, decimals);
        return Marked(rounded.ToString("0.############", CultureInfo.InvariantCulture));
    }

    private string Marked(string plain) => plain.Replace('.', DecimalMark);
}

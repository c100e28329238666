using System.Text.RegularExpressions;

namespace Chandlery.Intake.Wording;

/// <summary>Finds out which mark a document writes before decimals, so that the other one with three figures behind it is a thousands mark.</summary>
internal static partial class DecimalMark
{
    private const int FewestDecimals = 2;

    /// <summary>Comma or point; null when the document writes both or too few to be certain.</summary>
    public static char? Of(IEnumerable<string> lines)
    {
        int commas = 0;
        int points = 0;
        foreach (string line in lines)
        {
            commas += Commas().Count(line);
            points += Points().Count(line);
        }

        return (commas, points) switch
        {
            (>= FewestDecimals, 0) => ',',
            (0, >= FewestDecimals) => '.',
            _ => null,
        };
    }

    /// <summary>The text without thousands marks in figures before a unit of mass by mass.</summary>
    public static string WithoutThousands(string text, char decimals)
    {
        Regex marked = decimals == ',' ? PointsInThousands() : CommasInThousands();
        return marked.Replace(text, "${a}${b}");
    }

    /// <summary>
    /// The phrase without blanks in thousands, before a unit of mass by mass, at its start or after a sign; elsewhere the figure before the
    /// blank may be another one.
    /// </summary>
    public static string WithoutBlanks(string phrase) => BlanksInThousands().Replace(phrase, "${a}${b}");

    // A decimal has one or two figures: three may be thousands; "1,2,4" in a name and "12.04.2026" are neither.
    [GeneratedRegex(@"(?<![0-9,.\p{L}-])[0-9]{1,3},[0-9]{1,2}(?![0-9,.-])")]
    private static partial Regex Commas();

    [GeneratedRegex(@"(?<![0-9,.\p{L}-])[0-9]{1,3}\.[0-9]{1,2}(?![0-9,.-])(?=\s*(?:%|mg|g/|°|[-\u2013<>≤≥]))")]
    private static partial Regex Points();

    [GeneratedRegex(@"(?<![0-9.,])(?<a>[1-9][0-9]{0,2})\.(?<b>[0-9]{3})(?=\s?mg\s?/\s?kg)")]
    private static partial Regex PointsInThousands();

    [GeneratedRegex(@"(?<![0-9.,])(?<a>[1-9][0-9]{0,2}),(?<b>[0-9]{3})(?=\s?mg\s?/\s?kg)")]
    private static partial Regex CommasInThousands();

    [GeneratedRegex(@"(?<=^|[:=<>]\s?)(?<a>[1-9][0-9]{0,2})\s(?<b>[0-9]{3})(?=\s?mg\s?/\s?kg)")]
    private static partial Regex BlanksInThousands();
}

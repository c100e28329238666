using System.Globalization;

namespace Chandlery.Tests.SecondCalculation;

/// <summary>
/// What is known of a liquid as a part of a mixture's line, such as
/// <c>liquid | flash 22.9 EN ISO 3679 | boiling 78 | burns no | viscosity 20.5 | vapour yes | class Flam. Liq. 2, H225</c>; a flash point
/// that is only known to lie above a figure is <c>flash above 60 EN ISO 3679</c>.
/// </summary>
internal static class LiquidText
{
    /// <summary>The word that such a part begins with.</summary>
    public const string Start = "liquid";

    /// <summary>Writes what is known.</summary>
    public static string Write(GivenLiquid liquid)
    {
        string?[] fields =
        [
            Start,
            liquid.Flash is { } f
                ? string.Create(CultureInfo.InvariantCulture, $"flash {(f.Above ? "above " : "")}{f.Celsius} {f.Method}")
                : null,
            Field("boiling", liquid.Boiling?.ToString(CultureInfo.InvariantCulture)),
            Field("burns", Answer(liquid.SustainsCombustion)),
            Field("viscosity", liquid.Viscosity?.ToString(CultureInfo.InvariantCulture)),
            Field("vapour", Answer(liquid.FormsVapour)),
            Field("class", liquid.Class),
        ];
        return string.Join(" | ", fields.OfType<string>());
    }

    /// <summary>Reads the fields of such a part.</summary>
    public static GivenLiquid Read(IReadOnlyList<string> fields)
    {
        Dictionary<string, string> said = fields.Skip(1).Select(f => f.Split(' ', 2)).ToDictionary(f => f[0], f => f[1]);
        return new GivenLiquid(
            said.TryGetValue("flash", out string? flash) ? Flash(flash) : null,
            Number(said, "boiling"),
            Truth(said, "burns"),
            Number(said, "viscosity"),
            Truth(said, "vapour"),
            said.GetValueOrDefault("class")
        );
    }

    private static GivenFlash Flash(string text)
    {
        const string above = "above ";
        bool isBound = text.StartsWith(above, StringComparison.Ordinal);
        string[] words = (isBound ? text[above.Length..] : text).Split(' ', 2);
        return new GivenFlash(double.Parse(words[0], CultureInfo.InvariantCulture), isBound, words[1]);
    }

    private static string? Field(string word, string? value) => value is null ? null : $"{word} {value}";

    private static string? Answer(bool? truth) =>
        truth switch
        {
            true => "yes",
            false => "no",
            null => null,
        };

    private static bool? Truth(Dictionary<string, string> said, string word) =>
        said.TryGetValue(word, out string? answer) ? answer == "yes" : null;

    private static double? Number(Dictionary<string, string> said, string word) =>
        said.TryGetValue(word, out string? figure) ? double.Parse(figure, CultureInfo.InvariantCulture) : null;
}

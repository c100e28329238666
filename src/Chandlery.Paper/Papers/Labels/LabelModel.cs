using System.Globalization;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Paper.Papers.Labels;

/// <summary>The values that the label's template may use.</summary>
internal static class LabelModel
{
    /// <summary>Messages that EN 15494 asks of every candle (four; see the project's sources), in the order they are shown.</summary>
    public static readonly IReadOnlyList<string> CompulsoryMessages = ["attended", "childrenAndPets", "distance", "flammable"];

    private const double GramsPerOunce = 28.349523125;

    /// <summary>The three messages of ASTM F2058 (from memory of the standard).</summary>
    public static readonly IReadOnlyList<string> AstmMessages = ["astmSight", "astmFire", "astmChildren"];

    /// <summary>The values.</summary>
    /// <param name="a">The candle.</param>
    /// <param name="advice">Burn-safety figures.</param>
    /// <param name="leftOff">Codes of statements that are left off because the package is small.</param>
    public static IReadOnlyDictionary<string, object?> Of(Assessment a, BurnAdvice advice, IReadOnlySet<string> leftOff)
    {
        bool several = a.Languages.Count > 1;
        return new Dictionary<string, object?>
        {
            ["name"] = a.Candle.Name,
            ["lang"] = a.Languages[0].Code,
            ["kind"] = string.Join(" / ", a.Languages.Select(l => l.Words[KindWord(a.Candle)])),
            ["pictograms"] = string.Join(' ', a.Label.Pictograms.Select(p => p.Code)),
            ["texts"] = a.Languages.Select(l => (object?)TextIn(l, a, several, leftOff)).ToList(),
            ["maker"] = a.Maker.Name,
            ["address"] = string.Join(", ", a.Maker.AddressLines),
            ["telephone"] = a.Maker.Telephone,
            ["contact"] = a.Maker.Email ?? a.Maker.Web,
            ["quantity"] = QuantityText(a),
            ["ufi"] = a.Ufi is null ? "" : $"UFI: {a.Ufi}",
            ["emergency"] = a.Edition.EmergencyTelephone.Needed ? a.Maker.EmergencyTelephone ?? "" : "",
            ["emergency_word"] = a.Languages[0].Words["emergencyTelephone"],
            ["warnings"] = Warnings(a),
            ["more_inside"] =
                string.Join(
                    " / ",
                    a.Languages.Select(l => several ? $"{l.Code.ToUpperInvariant()} {l.Words["moreInside"]}" : l.Words["moreInside"])
                ) + " ▸",
            ["qr"] = a.Candle.InformationUrl ?? "",
            ["gtin"] = a.Candle.Gtin ?? "",
            ["figure"] = a.Edition.Formats.Quantity.HeightFor(a.Candle.NetMass, a.Vessel).Value,
            ["batch"] = a.BatchCode is null ? "" : $"{a.Languages[0].Words["batch"]} {a.BatchCode}",
            ["safety"] = Safety(a.Candle, advice),
        };
    }

    // The United States want both systems of units (16 CFR 500.8), the rest of the world grams.
    private static string QuantityText(Assessment a)
    {
        double grams = a.Candle.NetMass.Value;
        return a.Edition.Label.QuantityUnits.Contains(QuantityUnit.Ounces)
            ? $"{a.Languages[0].Words["netWeight"]} {(Math.Floor(grams / GramsPerOunce * 10) / 10).ToString("0.0", CultureInfo.InvariantCulture)} oz ({Figures.Plain(grams)} g)"
            : $"{Figures.Plain(grams)} g";
    }

    private static List<object?> Warnings(Assessment a) => [.. a.Edition.Label.Warnings.Select(key => (object?)a.Languages[0].Words[key])];

    private static string KindWord(Candle candle) => candle.Use == CandleUse.Outdoor ? "outdoorCandle" : "scentedCandle";

    private static Dictionary<string, object?> TextIn(Language language, Assessment a, bool several, IReadOnlySet<string> leftOff)
    {
        LabelElements label = a.Label;
        string names = string.Join(", ", label.Named.Select(n => n.Name));
        return new Dictionary<string, object?>
        {
            ["tag"] = several ? language.Code.ToUpperInvariant() : "",
            ["warning"] = !a.Edition.Label.ShowsHazards ? language.Words["usWarning"] : "",
            ["signal_word"] = label.SignalWord is { } word ? language.Words[word.Code.Key] : "",
            ["contains"] = label.Hazard.Count > 0 && names.Length > 0 ? $"{language.Words["contains"]}: {names}." : "",
            ["hazard"] = Sentences(language, label.Hazard.Where(h => !leftOff.Contains(h.Code)), label),
            ["precautionary"] = Sentences(language, label.Precautionary.Where(p => !leftOff.Contains(p.Code)), label),
            ["supplemental"] = $"{Sentences(language, label.Supplemental, label)} {Unknown(language, a)}".Trim(),
        };
    }

    private static string Unknown(Language language, Assessment a) =>
        a.Classification.UnknownToxicity is { } unknown && a.Edition.Label.ShowsHazards
            ? language.Words["unknownToxicity"].Replace("{percent}", Figures.Plain(unknown.Share.Value), StringComparison.Ordinal)
            : "";

    private static string Sentences(Language language, IEnumerable<StatementChoice> choices, LabelElements label) =>
        string.Join(' ', choices.Select(c => StatementText.Printed(language, c.Code, label)));

    private static List<object?> Safety(Candle candle, BurnAdvice advice)
    {
        bool outdoor = candle.Use == CandleUse.Outdoor;
        double distance = outdoor ? advice.OutdoorDistanceCm : advice.IndoorDistanceCm;
        IEnumerable<string> symbols = CompulsoryMessages.Prepend("warning").Concat(outdoor ? ["outdoorOnly"] : []);
        return
        [
            .. symbols.Select(s =>
                (object?)
                    new Dictionary<string, object?>
                    {
                        ["symbol"] = s,
                        ["caption"] = s == "distance" ? $"≥ {Figures.Plain(distance)} cm" : "",
                    }
            ),
        ];
    }
}

using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Paper.Documents;

/// <summary>The values that the label's template may use.</summary>
internal static class LabelModel
{
    /// <summary>Messages that EN 15494 asks of every candle (four; see the project's sources), in the order they are shown.</summary>
    public static readonly IReadOnlyList<string> CompulsoryMessages = ["attended", "childrenAndPets", "distance", "flammable"];

    public static IReadOnlyDictionary<string, object?> Of(Assessment a, BurnAdvice advice)
    {
        bool several = a.Languages.Count > 1;
        return new Dictionary<string, object?>
        {
            ["name"] = a.Candle.Name,
            ["lang"] = a.Languages[0].Code,
            ["kind"] = string.Join(" / ", a.Languages.Select(l => l.Words[KindWord(a.Candle)])),
            ["pictograms"] = string.Join(' ', a.Label.Pictograms.Select(p => p.Code)),
            ["texts"] = a.Languages.Select(l => (object?)TextIn(l, a, several)).ToList(),
            ["maker"] = a.Maker.Name,
            ["address"] = string.Join(", ", a.Maker.AddressLines),
            ["telephone"] = a.Maker.Telephone,
            ["contact"] = a.Maker.Email ?? a.Maker.Web,
            ["quantity"] = QuantityText(a.Candle.NetMass),
            ["figure"] = a.Edition.Formats.Quantity.HeightFor(a.Candle.NetMass).Value,
            ["batch"] = a.BatchCode is null ? "" : $"{a.Languages[0].Words["batch"]} {a.BatchCode}",
            ["safety"] = Safety(a.Candle, advice),
        };
    }

    /// <summary>The nominal quantity as printed.</summary>
    public static string QuantityText(Grams mass) => Figures.Plain(mass.Value) + " g";

    private static string KindWord(Candle candle) => candle.Use == CandleUse.Outdoor ? "outdoorCandle" : "scentedCandle";

    private static Dictionary<string, object?> TextIn(Language language, Assessment a, bool several)
    {
        LabelElements label = a.Label;
        string names = string.Join(", ", label.Named.Select(n => n.Name));
        return new Dictionary<string, object?>
        {
            ["tag"] = several ? language.Code.ToUpperInvariant() : "",
            ["signal_word"] = label.SignalWord is { } word ? language.Words[word.Code == "Danger" ? "danger" : "warning"] : "",
            ["contains"] = label.Hazard.Count > 0 && names.Length > 0 ? $"{language.Words["contains"]}: {names}." : "",
            ["hazard"] = Sentences(language, label.Hazard, label),
            ["precautionary"] = Sentences(language, label.Precautionary, label),
            ["supplemental"] = Sentences(language, label.Supplemental, label),
        };
    }

    private static string Sentences(Language language, IReadOnlyList<LabelChoice> choices, LabelElements label) =>
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

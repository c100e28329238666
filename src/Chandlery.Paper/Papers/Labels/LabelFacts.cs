using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;

namespace Chandlery.Paper.Papers.Labels;

/// <summary>Views of a candle for the label's templates.</summary>
/// <param name="a">The candle.</param>
/// <param name="advice">Burn-safety figures.</param>
/// <param name="leftOff">Codes of statements that are left off because the package is small.</param>
internal sealed class LabelFacts(Assessment a, BurnAdvice advice, IReadOnlySet<string> leftOff)
{
    private bool HasSeveralLanguages => a.Languages.Count > 1;

    private Language First => a.Languages[0];

    /// <summary>The label, or the inside of a leaflet.</summary>
    public LabelView Label() =>
        new()
        {
            Name = a.Candle.Name,
            Lang = First.Code,
            Kind = Kind(),
            Pictograms = Pictograms(),
            Texts = [.. a.Languages.Select(TextIn)],
            Maker = MakerView.Of(a.Maker),
            Emergency = Emergency(),
            Ufi = Ufi(),
            Batch = Batch(),
            Safety = Safety(),
            Figure = Figure(),
            Quantity = Quantity(),
            EMark = EMark(),
            Qr = a.Candle.InformationUrl ?? "",
            Gtin = a.Candle.Gtin?.Text ?? "",
        };

    /// <summary>The label that shows fire-safety warnings and no hazards.</summary>
    public ConsumerLabelView ConsumerLabel() =>
        new()
        {
            Name = a.Candle.Name,
            Lang = First.Code,
            Kind = Kind(),
            UsWarning = UsWarningView.Of(a, First),
            Maker = MakerView.Of(a.Maker),
            Batch = Batch(),
            Figure = Figure(),
            Quantity = Quantity(),
            Qr = a.Candle.InformationUrl ?? "",
            Gtin = a.Candle.Gtin?.Text ?? "",
        };

    /// <summary>The front of a leaflet.</summary>
    public LeafletFrontView LeafletFront() =>
        new()
        {
            Name = a.Candle.Name,
            Lang = First.Code,
            Kind = Kind(),
            Pictograms = Pictograms(),
            Signals = [.. a.Languages.Select(l => new LeafletSignalView(TagOf(l), SignalWord(l)))],
            Maker = MakerView.Of(a.Maker),
            Ufi = Ufi(),
            Batch = Batch(),
            MoreInside = string.Join(" / ", a.Languages.Select(l => $"{TagOf(l)} {l.Words["moreInside"]}".TrimStart())) + " ▸",
            Safety = Safety(),
            Figure = Figure(),
            Quantity = Quantity(),
            EMark = EMark(),
        };

    private string TagOf(Language language) => HasSeveralLanguages ? language.Code.ToUpperInvariant() : "";

    private string Kind() => string.Join(" / ", a.Languages.Select(l => l.Breaks.In(l.Words[CandleWords.KindOf(a)])));

    private string Pictograms() => string.Join(' ', a.Label.Pictograms.Select(p => p.Text));

    private string Ufi() => a.Ufi is null ? "" : $"UFI: {a.Ufi}";

    private string Batch() => a.BatchCode is null ? "" : $"{First.Words["batch"]} {a.BatchCode}";

    private string Emergency() =>
        a.Edition.EmergencyTelephone.Needed && a.Maker.EmergencyTelephone is { } number
            ? $"{First.Words["emergencyTelephone"]}: {number}"
            : "";

    private double EMark() => a.EMark?.Height is { } height ? height.Value : 0;

    private double Figure() => a.Edition.Formats.Quantity.HeightFor(a.Candle, a.Vessel).Value;

    private string Quantity()
    {
        double grams = a.Candle.NetMass.Value;
        return a.Edition.Label.QuantityUnits.Contains(QuantityUnit.Ounces)
                ? $"{First.Words["netWeight"]} {First.Figures.Ounces(a.Candle.NetMass)} oz ({First.Figures.Declared(grams)} g)"
            : a.Candle.NetVolume is { } volume ? $"{First.Figures.Declared(volume.Value)} ml"
            : $"{First.Figures.Declared(grams)} g";
    }

    private string SignalWord(Language language) => a.Label.SignalWord is { } word ? language.Words[word.Code.Key] : "";

    private LabelTextView TextIn(Language language)
    {
        LabelElements label = a.Label;
        List<string> names = [.. label.Contained.Select(n => n.Name)];
        return new LabelTextView(
            language.Code,
            TagOf(language),
            SignalWord(language),
            names.Count > 0 ? StatementText.Contains(language, names) : "",
            Sentences(language, label.Hazard.Where(h => !leftOff.Contains(h.Code))),
            Sentences(language, label.Precautionary.Where(p => !leftOff.Contains(p.Code))),
            $"{Sentences(language, label.Supplemental)} {language.Breaks.In(Unknown(language))}".Trim()
        );
    }

    private string Unknown(Language language)
    {
        if (!a.Edition.Label.ShowsHazards)
        {
            return "";
        }

        string toxicity = a.Classification.UnknownToxicity is { } unknown ? StatementText.UnknownToxicity(language, unknown) : "";
        string aquatic = a.Classification.UnknownAquatic is { } waters ? StatementText.UnknownAquatic(language, waters) : "";
        return $"{toxicity} {aquatic}".Trim();
    }

    private string Sentences(Language language, IEnumerable<StatementChoice> choices) =>
        string.Join(' ', choices.Select(c => language.Breaks.In(StatementText.Printed(language, c.Code, a.Label))));

    private List<LabelSymbolView> Safety()
    {
        double distance = a.Candle.Use == CandleUse.Outdoor ? advice.OutdoorDistanceCm : advice.IndoorDistanceCm;
        IEnumerable<string> keys = BurnMessages.Keys(a.Candle, a.Kind, MessageList.Label).Prepend("warning");
        IReadOnlyDictionary<string, string> figures = BurnFigures.Of(a.Candle, a.Vessel, advice, First.Figures);
        return
        [
            .. keys.Select(s => new LabelSymbolView(
                SafetyMessages.SignOf(s),
                s == "distance" ? $"≥ {First.Figures.Declared(distance)} cm" : "",
                First.Safety.TryGetValue(s, out string? message) ? BurnFigures.Fill(message, figures) : First.Words["warning"]
            )),
        ];
    }
}

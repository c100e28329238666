using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;

namespace Chandlery.Paper.Papers.Cards;

/// <summary>What cards say about a candle in one language.</summary>
internal sealed class CardFacts(Assessment a, Language language, BurnAdvice advice)
{
    private readonly IReadOnlyDictionary<string, string> figures = BurnFigures.Of(a.Candle, a.Vessel, advice, language.Figures);

    /// <summary>The candle.</summary>
    public Assessment Assessment => a;

    /// <summary>The language.</summary>
    public Language Language => language;

    /// <summary>Who answers for the candle.</summary>
    public MakerView Maker => MakerView.Of(a.Maker);

    /// <summary>The warning of the United States.</summary>
    public UsWarningView UsWarning => UsWarningView.Of(a, language);

    /// <summary>Key of the message where to burn it.</summary>
    public string Place => a.Candle.Use == CandleUse.Outdoor ? "outdoorOnly" : "draught";

    /// <summary>Key of the message on trimming.</summary>
    public string Trim => HasSeveralWicks ? "trimWicks" : "trimWick";

    /// <summary>Whether it has more than one wick.</summary>
    public bool HasSeveralWicks => a.Candle.Wicks.Count > 1;

    /// <summary>The messages with these keys, with their figures.</summary>
    public IReadOnlyList<CardMessageView> Messages(params IEnumerable<string> keys) =>
        [.. keys.Select(key => new CardMessageView(SymbolOf(key), BurnFigures.Fill(language.Safety[key], figures)))];

    private static string SymbolOf(string key) =>
        key switch
        {
            "trimWicks" => "trimWick",
            "firstBurn" or "longestBurn" or "relight" or "allWicks" or "tallFlame" or "fire" => "",
            _ => key,
        };
}

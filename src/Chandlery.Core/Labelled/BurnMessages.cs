using Chandlery.Core.Declared;
using Chandlery.Core.Law;

namespace Chandlery.Core.Labelled;

/// <summary>All that the burn-safety card says of a candle, as sentences.</summary>
public static class BurnMessages
{
    /// <summary>The sentences in one language, in the order of the card.</summary>
    public static IReadOnlyList<string> All(Candle candle, Vessel vessel, BurnAdvice advice, Language language)
    {
        IReadOnlyDictionary<string, string> figures = BurnFigures.Of(candle, vessel, advice, language.Figures);
        return [.. Keys(candle).Select(key => BurnFigures.Fill(language.Safety[key], figures))];
    }

    private static IEnumerable<string> Keys(Candle candle)
    {
        bool several = candle.Wicks.Count > 1;
        return
        [
            "attended",
            "childrenAndPets",
            "distance",
            "flammable",
            candle.Use == CandleUse.Outdoor ? "outdoorOnly" : "draught",
            "surface",
            several ? "trimWicks" : "trimWick",
            "firstBurn",
            "longestBurn",
            "poolClear",
            "noMoving",
            "hotVessel",
            .. several ? new[] { "allWicks" } : [],
            "snuff",
            "noLiquid",
            "relight",
            "stop",
            "tallFlame",
            "fire",
        ];
    }
}

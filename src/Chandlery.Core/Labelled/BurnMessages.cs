using Chandlery.Core.Declared;
using Chandlery.Core.Law;

namespace Chandlery.Core.Labelled;

/// <summary>What is said of the safe use of a product: its kind's messages, as far as they hold of it.</summary>
public static class BurnMessages
{
    /// <summary>All of them as sentences in one language, in the order of a listing.</summary>
    public static IReadOnlyList<string> All(Candle candle, ProductKind kind, Vessel vessel, BurnAdvice advice, Language language)
    {
        IReadOnlyDictionary<string, string> figures = BurnFigures.Of(candle, vessel, advice, language.Figures);
        return [.. Holding(candle, kind, kind.Listing).Select(key => BurnFigures.Fill(language.Safety[key], figures))];
    }

    /// <summary>The keys of the messages that stand at a place.</summary>
    public static IReadOnlyList<string> Keys(Candle candle, ProductKind kind, MessageList list) =>
        Holding(candle, kind, kind.Messages[list]);

    private static List<string> Holding(Candle candle, ProductKind kind, IReadOnlyList<string> keys) =>
        [.. keys.Where(key => !kind.OnlyWhen.TryGetValue(key, out MessageWhen when) || Holds(when, candle))];

    private static bool Holds(MessageWhen when, Candle candle) =>
        when switch
        {
            MessageWhen.OneWick => candle.Wicks.Count == 1,
            MessageWhen.SeveralWicks => candle.Wicks.Count > 1,
            MessageWhen.Indoor => candle.Use == CandleUse.Indoor,
            _ => candle.Use == CandleUse.Outdoor,
        };
}

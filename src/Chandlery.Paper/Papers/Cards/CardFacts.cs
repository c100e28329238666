using Chandlery.Core.Assessed;
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

    /// <summary>Signal word above the first messages; empty where no law asks for one.</summary>
    public string Warning => UsWarningView.Of(a, language).Word;

    /// <summary>The three messages that save lives, in the law's own words where it has some.</summary>
    public IReadOnlyList<CardMessageView> First =>
        Warning.Length > 0
            ? [.. a.Edition.Label.Warnings.Select(key => new CardMessageView(SafetyMessages.SignOf(key), language.Words[key]))]
            : Messages(MessageList.First);

    /// <summary>For how many hours it may burn at a time.</summary>
    public double LongestBurnHours => BurnFigures.LongestBurnHours(a.Candle, a.Vessel, advice);

    /// <summary>The heading of the card.</summary>
    public string Title => language.Words[a.Kind.Title];

    /// <summary>The messages that its kind has at a place, with their figures.</summary>
    public IReadOnlyList<CardMessageView> Messages(MessageList list) =>
        [
            .. BurnMessages
                .Keys(a.Candle, a.Kind, list)
                .Select(key => new CardMessageView(SafetyMessages.SignOf(key), BurnFigures.Fill(language.Safety[key], figures))),
        ];
}

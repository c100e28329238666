using Chandlery.Core.Assessed;
using Chandlery.Core.Law;
using Chandlery.Paper.Papers.Cards;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.BurnCards;

/// <summary>The card that the buyer gets with the candle.</summary>
public sealed class BurnCardPaper() : CardPaper("burn-card", "Burn-safety card", "buyer", "A6")
{
    /// <inheritdoc/>
    protected override string EndingFor(Assessment a) => a.Kind.Burns ? Id : "use-card";

    /// <inheritdoc/>
    internal override ITemplateView View(CardFacts facts)
    {
        Language language = facts.Language;
        return new BurnCardView(
            facts.Title,
            language.Code,
            facts.Assessment.Candle.Name,
            facts.Warning,
            facts.First,
            facts.Messages(MessageList.Before),
            facts.Messages(MessageList.During),
            facts.Messages(MessageList.After),
            facts.Messages(MessageList.Trouble),
            language.Caution,
            facts.Maker
        );
    }
}

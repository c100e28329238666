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
        return new BurnCardView
        {
            Title = facts.Title,
            Lang = language.Code,
            Name = facts.Assessment.Candle.Name,
            Warning = facts.Warning,
            First = facts.First,
            Before = facts.Messages(MessageList.Before),
            During = facts.Messages(MessageList.During),
            Stop = facts.Messages(MessageList.After),
            Trouble = facts.Messages(MessageList.Trouble),
            Caution = language.Caution,
            Maker = facts.Maker,
        };
    }
}

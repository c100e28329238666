using Chandlery.Core.Law;
using Chandlery.Paper.Papers.Cards;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.PocketCards;

/// <summary>The card for the buyer's pocket or the parcel: the messages that matter most.</summary>
public sealed class PocketCardPaper() : CardPaper("pocket-card", "Pocket card", "pocket", "A7")
{
    /// <inheritdoc/>
    internal override ITemplateView View(CardFacts facts) =>
        new PocketCardView(
            facts.Title,
            facts.Language.Code,
            facts.Assessment.Candle.Name,
            facts.Warning,
            facts.First,
            facts.Messages(MessageList.Pocket),
            facts.Maker
        );
}

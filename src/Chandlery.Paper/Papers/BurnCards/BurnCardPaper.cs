using Chandlery.Core.Law;
using Chandlery.Paper.Papers.Cards;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.BurnCards;

/// <summary>The card that the buyer gets with the candle.</summary>
public sealed class BurnCardPaper() : CardPaper("burn-card", "Burn-safety card", "buyer", "A6")
{
    private static readonly string[] WhileBurning = ["firstBurn", "longestBurn", "poolClear", "noMoving", "hotVessel"];

    /// <inheritdoc/>
    internal override ITemplateView View(CardFacts facts)
    {
        Language language = facts.Language;
        return new BurnCardView(
            language.Words["cardTitle"],
            language.Code,
            facts.Assessment.Candle.Name,
            facts.Warning,
            facts.First,
            facts.Messages(facts.Place, "distance", "surface", facts.Trim),
            facts.Messages(facts.HasSeveralWicks ? ["allWicks", .. WhileBurning] : WhileBurning),
            facts.Messages("snuff", "noLiquid", "relight", "stop"),
            facts.Messages("tallFlame", "fire"),
            language.Caution,
            facts.Maker
        );
    }
}

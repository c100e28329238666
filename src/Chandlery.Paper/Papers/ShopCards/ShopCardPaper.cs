using Chandlery.Core.Assessed;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Paper.Papers.Cards;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.ShopCards;

/// <summary>The card for the shop's shelf.</summary>
public sealed class ShopCardPaper()
    : CardPaper("shop-card", "Shop card", "shop", "A5: what to tell customers, what is in it, how to store it, whom to ask")
{
    /// <inheritdoc/>
    internal override ITemplateView View(CardFacts facts)
    {
        Language language = facts.Language;
        return new ShopCardView
        {
            ShopTitle = language.Words["shopTitle"],
            Lang = language.Code,
            Name = facts.Assessment.Candle.Name,
            Warning = facts.Warning,
            First = facts.First,
            TellHeading = language.Words["tellCustomers"],
            Tell = facts.Messages(MessageList.Shop),
            ContentHeading = language.Words["whatIsInIt"],
            Content = string.Join(' ', Content(facts.Assessment, language)),
            StoreHeading = language.Words["howToStore"],
            Store = language.Words["storeAdvice"],
            Trouble = facts.Messages(MessageList.Trouble),
            AskHeading = language.Words["whomToAsk"],
            Maker = facts.Maker,
            Emergency = facts.Assessment.Maker.EmergencyTelephone is { } number ? $"{language.Words["emergencyTelephone"]}: {number}" : "",
            Caution = language.Caution,
        };
    }

    // Sensitisers with their share, and what the label says about hazards.
    private static IEnumerable<string> Content(Assessment a, Language language)
    {
        if (a.Classification.Sensitisers.Count == 0)
        {
            yield return language.Words["noSensitisers"];
        }
        else
        {
            IEnumerable<string> names = a
                .Classification.Sensitisers.OrderByDescending(s => s.Substance.Ingredient.WholeHigh.Value)
                .Select(s => $"{s.Substance.Name} (≤ {language.Figures.AtMost(s.Substance.Ingredient.WholeHigh)})");
            yield return StatementText.Contains(language, names);
        }

        if (a.Label.Hazard.Count > 0)
        {
            string word = a.Label.SignalWord is { } w ? language.Words[w.Code == "Danger" ? "danger" : "warning"] + ". " : "";
            yield return word + string.Join(' ', a.Label.Hazard.Select(h => StatementText.Printed(language, h.Code, a.Label)));
        }
    }
}

using Chandlery.Paper.Papers.Cards;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.ShopCards;

/// <summary>The shop's card in one language.</summary>
/// <param name="ShopTitle">Its heading.</param>
/// <param name="Lang">Code of the language.</param>
/// <param name="Name">Trade name.</param>
/// <param name="Warning">Signal word above the first messages; empty for none.</param>
/// <param name="First">The three messages that save lives.</param>
/// <param name="TellHeading">Heading of what to tell customers.</param>
/// <param name="Tell">What to tell customers.</param>
/// <param name="ContentHeading">Heading of what is in it.</param>
/// <param name="Content">What is in it, and what the label says about hazards.</param>
/// <param name="StoreHeading">Heading of how to store it.</param>
/// <param name="Store">How to store it.</param>
/// <param name="Trouble">What to do when something happens.</param>
/// <param name="AskHeading">Heading of whom to ask.</param>
/// <param name="Maker">Whom to ask.</param>
/// <param name="Emergency">Emergency telephone with its word; empty where none is declared.</param>
/// <param name="Caution">The reminder that closes every card.</param>
internal sealed record ShopCardView(
    string ShopTitle,
    string Lang,
    string Name,
    string Warning,
    IReadOnlyList<CardMessageView> First,
    string TellHeading,
    IReadOnlyList<CardMessageView> Tell,
    string ContentHeading,
    string Content,
    string StoreHeading,
    string Store,
    IReadOnlyList<CardMessageView> Trouble,
    string AskHeading,
    MakerView Maker,
    string Emergency,
    string Caution
) : ITemplateView
{
    /// <inheritdoc/>
    public string Template => "shop-card.sbn";

    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values =>
        [
            ("shop_title", ShopTitle),
            ("lang", Lang),
            ("name", Name),
            ("warning", Warning),
            ("first", First),
            ("tell_heading", TellHeading),
            ("tell", Tell),
            ("content_heading", ContentHeading),
            ("content", Content),
            ("store_heading", StoreHeading),
            ("store", Store),
            ("trouble", Trouble),
            ("ask_heading", AskHeading),
            ("maker", Maker),
            ("emergency", Emergency),
            ("caution", Caution),
        ];
}

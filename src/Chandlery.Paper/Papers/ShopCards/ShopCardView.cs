using Chandlery.Paper.Papers.Cards;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.ShopCards;

/// <summary>The shop's card in one language.</summary>
internal sealed record ShopCardView : ITemplateView
{
    /// <summary>Its heading.</summary>
    public required string ShopTitle { get; init; }

    /// <summary>Code of the language.</summary>
    public required string Lang { get; init; }

    /// <summary>Trade name.</summary>
    public required string Name { get; init; }

    /// <summary>Signal word above the first messages; empty for none.</summary>
    public required string Warning { get; init; }

    /// <summary>The three messages that save lives.</summary>
    public required IReadOnlyList<CardMessageView> First { get; init; }

    /// <summary>Heading of what to tell customers.</summary>
    public required string TellHeading { get; init; }

    /// <summary>What to tell customers.</summary>
    public required IReadOnlyList<CardMessageView> Tell { get; init; }

    /// <summary>Heading of what is in it.</summary>
    public required string ContentHeading { get; init; }

    /// <summary>What is in it, and what the label says about hazards.</summary>
    public required string Content { get; init; }

    /// <summary>Heading of how to store it.</summary>
    public required string StoreHeading { get; init; }

    /// <summary>How to store it.</summary>
    public required string Store { get; init; }

    /// <summary>What to do when something happens.</summary>
    public required IReadOnlyList<CardMessageView> Trouble { get; init; }

    /// <summary>Heading of whom to ask.</summary>
    public required string AskHeading { get; init; }

    /// <summary>Whom to ask.</summary>
    public required MakerView Maker { get; init; }

    /// <summary>Emergency telephone with its word; empty where none is declared.</summary>
    public required string Emergency { get; init; }

    /// <summary>The reminder that closes every card.</summary>
    public required string Caution { get; init; }

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

using Chandlery.Paper.Papers.Cards;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.BurnCards;

/// <summary>The buyer's card in one language.</summary>
internal sealed record BurnCardView : ITemplateView
{
    /// <summary>Its heading.</summary>
    public required string Title { get; init; }

    /// <summary>Code of the language.</summary>
    public required string Lang { get; init; }

    /// <summary>Trade name.</summary>
    public required string Name { get; init; }

    /// <summary>Signal word above the first messages; empty for none.</summary>
    public required string Warning { get; init; }

    /// <summary>The three messages that save lives.</summary>
    public required IReadOnlyList<CardMessageView> First { get; init; }

    /// <summary>What to do before lighting.</summary>
    public required IReadOnlyList<CardMessageView> Before { get; init; }

    /// <summary>What to mind while it burns.</summary>
    public required IReadOnlyList<CardMessageView> During { get; init; }

    /// <summary>How and when to put it out.</summary>
    public required IReadOnlyList<CardMessageView> Stop { get; init; }

    /// <summary>What to do when something happens.</summary>
    public required IReadOnlyList<CardMessageView> Trouble { get; init; }

    /// <summary>The reminder that closes every card.</summary>
    public required string Caution { get; init; }

    /// <summary>Who answers for it.</summary>
    public required MakerView Maker { get; init; }

    /// <inheritdoc/>
    public string Template => "burn-card.sbn";

    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values =>
        [
            ("title", Title),
            ("lang", Lang),
            ("name", Name),
            ("warning", Warning),
            ("first", First),
            ("before", Before),
            ("during", During),
            ("stop", Stop),
            ("trouble", Trouble),
            ("caution", Caution),
            ("maker", Maker),
        ];
}

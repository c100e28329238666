using Chandlery.Paper.Papers.Cards;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.BurnCards;

/// <summary>The buyer's card in one language.</summary>
/// <param name="Title">Its heading.</param>
/// <param name="Lang">Code of the language.</param>
/// <param name="Name">Trade name.</param>
/// <param name="Warning">Signal word above the first messages; empty for none.</param>
/// <param name="First">The three messages that save lives.</param>
/// <param name="Before">What to do before lighting.</param>
/// <param name="During">What to mind while it burns.</param>
/// <param name="Stop">How and when to put it out.</param>
/// <param name="Trouble">What to do when something happens.</param>
/// <param name="Caution">The reminder that closes every card.</param>
/// <param name="Maker">Who answers for it.</param>
internal sealed record BurnCardView(
    string Title,
    string Lang,
    string Name,
    string Warning,
    IReadOnlyList<CardMessageView> First,
    IReadOnlyList<CardMessageView> Before,
    IReadOnlyList<CardMessageView> During,
    IReadOnlyList<CardMessageView> Stop,
    IReadOnlyList<CardMessageView> Trouble,
    string Caution,
    MakerView Maker
) : ITemplateView
{
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

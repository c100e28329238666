using Chandlery.Paper.Papers.Cards;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.PocketCards;

/// <summary>The pocket card in one language.</summary>
/// <param name="Title">Its heading.</param>
/// <param name="Lang">Code of the language.</param>
/// <param name="Name">Trade name.</param>
/// <param name="Warning">Signal word above the first messages; empty for none.</param>
/// <param name="First">The three messages that save lives.</param>
/// <param name="Pocket">The messages that matter most besides.</param>
/// <param name="Maker">Who answers for it.</param>
internal sealed record PocketCardView(
    string Title,
    string Lang,
    string Name,
    string Warning,
    IReadOnlyList<CardMessageView> First,
    IReadOnlyList<CardMessageView> Pocket,
    MakerView Maker
) : ITemplateView
{
    /// <inheritdoc/>
    public string Template => "burn-card-pocket.sbn";

    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values =>
        [("title", Title), ("lang", Lang), ("name", Name), ("warning", Warning), ("first", First), ("pocket", Pocket), ("maker", Maker)];
}

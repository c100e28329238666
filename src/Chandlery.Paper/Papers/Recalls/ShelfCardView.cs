using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.Recalls;

/// <summary>A card for the shelf where recalled candles stood.</summary>
/// <param name="Title">The headline.</param>
/// <param name="Lang">Code of the language.</param>
/// <param name="Name">Trade name.</param>
/// <param name="Parts">The notice.</param>
internal sealed record ShelfCardView(string Title, string Lang, string Name, IReadOnlyList<NoticePartView> Parts) : ITemplateView
{
    /// <inheritdoc/>
    public string Template => "recall-shelf-card.sbn";

    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values => [("title", Title), ("lang", Lang), ("name", Name), ("parts", Parts)];
}

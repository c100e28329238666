using Chandlery.Paper.Papers.Cards;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.BurnCards;

/// <summary>The buyer's card in one language.</summary>
/// <param name="Title">Its heading.</param>
/// <param name="Lang">Code of the language.</param>
/// <param name="Name">Trade name.</param>
/// <param name="UsWarning">The warning of the United States.</param>
/// <param name="First">The messages for every candle.</param>
/// <param name="BeforeHeading">Heading of what to do before lighting.</param>
/// <param name="Before">What to do before lighting.</param>
/// <param name="DuringHeading">Heading of what to mind while it burns.</param>
/// <param name="During">What to mind while it burns.</param>
/// <param name="StopHeading">Heading of how to put it out.</param>
/// <param name="Stop">How and when to put it out.</param>
/// <param name="TroubleHeading">Heading of what to do when something happens.</param>
/// <param name="Trouble">What to do when something happens.</param>
/// <param name="Caution">The reminder that closes every card.</param>
/// <param name="Maker">Who answers for it.</param>
internal sealed record BurnCardView(
    string Title,
    string Lang,
    string Name,
    UsWarningView UsWarning,
    IReadOnlyList<CardMessageView> First,
    string BeforeHeading,
    IReadOnlyList<CardMessageView> Before,
    string DuringHeading,
    IReadOnlyList<CardMessageView> During,
    string StopHeading,
    IReadOnlyList<CardMessageView> Stop,
    string TroubleHeading,
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
            ("us_warning", UsWarning),
            ("first", First),
            ("before_heading", BeforeHeading),
            ("before", Before),
            ("during_heading", DuringHeading),
            ("during", During),
            ("stop_heading", StopHeading),
            ("stop", Stop),
            ("trouble_heading", TroubleHeading),
            ("trouble", Trouble),
            ("caution", Caution),
            ("maker", Maker),
        ];
}

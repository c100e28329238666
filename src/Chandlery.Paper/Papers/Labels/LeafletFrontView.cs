using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.Labels;

/// <summary>The front of a leaflet or tag. Texts that do not apply are empty.</summary>
/// <param name="Name">Trade name.</param>
/// <param name="Lang">Code of the first language.</param>
/// <param name="Kind">What it is, in every language.</param>
/// <param name="Pictograms">Codes of the pictograms, with spaces.</param>
/// <param name="Signals">Signal words, a language each.</param>
/// <param name="Maker">Who answers for it.</param>
/// <param name="Ufi">UFI with its word.</param>
/// <param name="Batch">Batch code with its word.</param>
/// <param name="MoreInside">That there is more inside, in every language.</param>
/// <param name="Safety">Symbols of burn safety.</param>
/// <param name="Figure">Least height of the quantity's figures, millimetres.</param>
/// <param name="Quantity">Net quantity with its unit.</param>
/// <param name="EMark">Height of the e-mark, millimetres; 0 where it is not printed.</param>
internal sealed record LeafletFrontView(
    string Name,
    string Lang,
    string Kind,
    string Pictograms,
    IReadOnlyList<LeafletSignalView> Signals,
    MakerView Maker,
    string Ufi,
    string Batch,
    string MoreInside,
    IReadOnlyList<LabelSymbolView> Safety,
    double Figure,
    string Quantity,
    double EMark
) : ITemplateView
{
    /// <inheritdoc/>
    public string Template => "leaflet-front.sbn";

    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values =>
        [
            ("name", Name),
            ("lang", Lang),
            ("kind", Kind),
            ("pictograms", Pictograms),
            ("signals", Signals),
            ("maker", Maker),
            ("ufi", Ufi),
            ("batch", Batch),
            ("more_inside", MoreInside),
            ("safety", Safety),
            ("figure", Figure),
            ("quantity", Quantity),
            ("e_mark", EMark),
        ];
}

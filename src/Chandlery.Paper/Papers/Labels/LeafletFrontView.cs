using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.Labels;

/// <summary>The front of a leaflet or tag. Texts that do not apply are empty.</summary>
internal sealed record LeafletFrontView : ITemplateView
{
    /// <summary>Trade name.</summary>
    public required string Name { get; init; }

    /// <summary>Code of the first language.</summary>
    public required string Lang { get; init; }

    /// <summary>What it is, in every language.</summary>
    public required string Kind { get; init; }

    /// <summary>Codes of the pictograms, with spaces.</summary>
    public required string Pictograms { get; init; }

    /// <summary>Signal words, a language each.</summary>
    public required IReadOnlyList<LeafletSignalView> Signals { get; init; }

    /// <summary>Who answers for it.</summary>
    public required MakerView Maker { get; init; }

    /// <summary>UFI with its word.</summary>
    public required string Ufi { get; init; }

    /// <summary>Batch code with its word.</summary>
    public required string Batch { get; init; }

    /// <summary>That there is more inside, in every language.</summary>
    public required string MoreInside { get; init; }

    /// <summary>Symbols of burn safety.</summary>
    public required IReadOnlyList<LabelSymbolView> Safety { get; init; }

    /// <summary>Least height of the quantity's figures, millimetres.</summary>
    public required double Figure { get; init; }

    /// <summary>Net quantity with its unit.</summary>
    public required string Quantity { get; init; }

    /// <summary>Height of the e-mark, millimetres; 0 where it is not printed.</summary>
    public required double EMark { get; init; }

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

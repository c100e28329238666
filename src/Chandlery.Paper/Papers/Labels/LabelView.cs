using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.Labels;

/// <summary>A label under the CLP Regulation and its relatives. Texts that do not apply are empty.</summary>
internal sealed record LabelView : ITemplateView
{
    /// <summary>Trade name.</summary>
    public required string Name { get; init; }

    /// <summary>Code of the first language.</summary>
    public required string Lang { get; init; }

    /// <summary>What it is, in every language.</summary>
    public required string Kind { get; init; }

    /// <summary>Codes of the pictograms, with spaces.</summary>
    public required string Pictograms { get; init; }

    /// <summary>What the law asks for, a language each.</summary>
    public required IReadOnlyList<LabelTextView> Texts { get; init; }

    /// <summary>Who answers for it.</summary>
    public required MakerView Maker { get; init; }

    /// <summary>Emergency telephone with its word, where the law wants it on the label.</summary>
    public required string Emergency { get; init; }

    /// <summary>UFI with its word.</summary>
    public required string Ufi { get; init; }

    /// <summary>Batch code with its word.</summary>
    public required string Batch { get; init; }

    /// <summary>Symbols of burn safety.</summary>
    public required IReadOnlyList<LabelSymbolView> Safety { get; init; }

    /// <summary>Least height of the quantity's figures, millimetres.</summary>
    public required double Figure { get; init; }

    /// <summary>Net quantity with its unit.</summary>
    public required string Quantity { get; init; }

    /// <summary>Height of the e-mark, millimetres; 0 where it is not printed.</summary>
    public required double EMark { get; init; }

    /// <summary>Address that the QR code leads to.</summary>
    public required string Qr { get; init; }

    /// <summary>Trade item number for the bar code.</summary>
    public required string Gtin { get; init; }

    /// <inheritdoc/>
    public string Template => "label.sbn";

    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values =>
        [
            ("name", Name),
            ("lang", Lang),
            ("kind", Kind),
            ("pictograms", Pictograms),
            ("texts", Texts),
            ("maker", Maker),
            ("emergency", Emergency),
            ("ufi", Ufi),
            ("batch", Batch),
            ("safety", Safety),
            ("figure", Figure),
            ("quantity", Quantity),
            ("e_mark", EMark),
            ("qr", Qr),
            ("gtin", Gtin),
        ];
}

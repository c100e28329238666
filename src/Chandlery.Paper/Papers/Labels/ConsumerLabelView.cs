using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.Labels;

/// <summary>The label of a consumer candle in the United States. Texts that do not apply are empty.</summary>
internal sealed record ConsumerLabelView : ITemplateView
{
    /// <summary>Trade name.</summary>
    public required string Name { get; init; }

    /// <summary>Code of the first language.</summary>
    public required string Lang { get; init; }

    /// <summary>What it is.</summary>
    public required string Kind { get; init; }

    /// <summary>The warning.</summary>
    public required UsWarningView UsWarning { get; init; }

    /// <summary>Who answers for it.</summary>
    public required MakerView Maker { get; init; }

    /// <summary>Batch code with its word.</summary>
    public required string Batch { get; init; }

    /// <summary>Least height of the quantity's figures, millimetres.</summary>
    public required double Figure { get; init; }

    /// <summary>Net quantity in both systems of units.</summary>
    public required string Quantity { get; init; }

    /// <summary>Address that the QR code leads to.</summary>
    public required string Qr { get; init; }

    /// <summary>Trade item number for the bar code.</summary>
    public required string Gtin { get; init; }

    /// <inheritdoc/>
    public string Template => "label-consumer.sbn";

    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values =>
        [
            ("name", Name),
            ("lang", Lang),
            ("kind", Kind),
            ("us_warning", UsWarning),
            ("maker", Maker),
            ("batch", Batch),
            ("figure", Figure),
            ("quantity", Quantity),
            ("qr", Qr),
            ("gtin", Gtin),
        ];
}

using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.Labels;

/// <summary>The label of a consumer candle in the United States. Texts that do not apply are empty.</summary>
/// <param name="Name">Trade name.</param>
/// <param name="Lang">Code of the first language.</param>
/// <param name="Kind">What it is.</param>
/// <param name="UsWarning">The warning.</param>
/// <param name="Maker">Who answers for it.</param>
/// <param name="Batch">Batch code with its word.</param>
/// <param name="Figure">Least height of the quantity's figures, millimetres.</param>
/// <param name="Quantity">Net quantity in both systems of units.</param>
/// <param name="Qr">Address that the QR code leads to.</param>
/// <param name="Gtin">Trade item number for the bar code.</param>
internal sealed record ConsumerLabelView(
    string Name,
    string Lang,
    string Kind,
    UsWarningView UsWarning,
    MakerView Maker,
    string Batch,
    double Figure,
    string Quantity,
    string Qr,
    string Gtin
) : ITemplateView
{
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

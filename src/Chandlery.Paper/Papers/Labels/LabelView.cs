using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.Labels;

/// <summary>A label under the CLP Regulation and its relatives. Texts that do not apply are empty.</summary>
/// <param name="Name">Trade name.</param>
/// <param name="Lang">Code of the first language.</param>
/// <param name="Kind">What it is, in every language.</param>
/// <param name="Pictograms">Codes of the pictograms, with spaces.</param>
/// <param name="Texts">What the law asks for, a language each.</param>
/// <param name="Maker">Who answers for it.</param>
/// <param name="Emergency">Emergency telephone with its word, where the law wants it on the label.</param>
/// <param name="Ufi">UFI with its word.</param>
/// <param name="Batch">Batch code with its word.</param>
/// <param name="Safety">Symbols of burn safety.</param>
/// <param name="Figure">Least height of the quantity's figures, millimetres.</param>
/// <param name="Quantity">Net quantity with its unit.</param>
/// <param name="EMark">Height of the e-mark, millimetres; 0 where it is not printed.</param>
/// <param name="Qr">Address that the QR code leads to.</param>
/// <param name="Gtin">Trade item number for the bar code.</param>
internal sealed record LabelView(
    string Name,
    string Lang,
    string Kind,
    string Pictograms,
    IReadOnlyList<LabelTextView> Texts,
    MakerView Maker,
    string Emergency,
    string Ufi,
    string Batch,
    IReadOnlyList<LabelSymbolView> Safety,
    double Figure,
    string Quantity,
    double EMark,
    string Qr,
    string Gtin
) : ITemplateView
{
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

namespace Chandlery.Paper.Markup;

/// <summary>QR code and bar code, side by side.</summary>
/// <param name="QrText">What the QR code holds; empty for none.</param>
/// <param name="Gtin">GTIN-13 of the bar code; empty for none.</param>
public sealed record Codes(string QrText, string Gtin) : Block;

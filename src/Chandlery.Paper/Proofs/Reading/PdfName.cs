namespace Chandlery.Paper.Proofs.Reading;

/// <summary>A name (ISO 32000-1, 7.3.5).</summary>
/// <param name="Text">The name without its slash.</param>
internal sealed record PdfName(string Text);

namespace Chandlery.Paper.Proofs.Reading;

/// <summary>A reference to an object (ISO 32000-1, 7.3.10).</summary>
/// <param name="Number">The object's number.</param>
internal sealed record PdfReference(int Number);

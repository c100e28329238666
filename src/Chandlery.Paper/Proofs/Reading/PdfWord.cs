namespace Chandlery.Paper.Proofs.Reading;

/// <summary>An operator or another bare word.</summary>
/// <param name="Text">The word.</param>
internal sealed record PdfWord(string Text);

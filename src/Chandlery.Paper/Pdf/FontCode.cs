namespace Chandlery.Paper.Pdf;

/// <summary>A code of a document's font.</summary>
/// <param name="Code">The code, from 1.</param>
/// <param name="Number">The glyph's number in the embedded font.</param>
/// <param name="Glyph">The glyph's number in the full font.</param>
/// <param name="Meaning">The characters that it stands for.</param>
internal sealed record FontCode(int Code, int Number, ushort Glyph, string Meaning);

namespace Chandlery.Paper.Fonts;

/// <summary>A run of text turned into glyphs, measured in font units.</summary>
/// <param name="Text">The text.</param>
/// <param name="Glyphs">Glyph numbers.</param>
/// <param name="Clusters">For each glyph the index of its first character in <paramref name="Text"/>.</param>
/// <param name="Positions">For each glyph its horizontal start, font units.</param>
/// <param name="Advance">Width of the whole, font units.</param>
public sealed record ShapedText(string Text, ushort[] Glyphs, int[] Clusters, int[] Positions, int Advance);

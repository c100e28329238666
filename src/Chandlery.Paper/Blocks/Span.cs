using Chandlery.Paper.Fonts;

namespace Chandlery.Paper.Blocks;

/// <summary>A piece of a paragraph in one weight.</summary>
/// <param name="Text">The text.</param>
/// <param name="Weight">Its weight.</param>
public sealed record Span(string Text, Weight Weight);

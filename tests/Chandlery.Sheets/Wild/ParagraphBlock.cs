namespace Chandlery.Sheets.Wild;

/// <summary>Lines of running text, each of which may wrap.</summary>
public sealed record ParagraphBlock(IReadOnlyList<string> Lines) : Block;

namespace Chandlery.Sheets.Wild;

/// <summary>A heading.</summary>
/// <param name="Text">Its text.</param>
/// <param name="Level">1 for a section, 2 for a subsection.</param>
public sealed record HeadingBlock(string Text, int Level) : Block;

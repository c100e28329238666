namespace Chandlery.Sheets.Wild;

/// <summary>A cell.</summary>
/// <param name="Lines">Its paragraphs, each of which may wrap.</param>
/// <param name="Span">How many columns it spans.</param>
public sealed record TableCell(IReadOnlyList<string> Lines, int Span = 1)
{
    public static TableCell Of(string text) => new(text.Split('\n'));
}

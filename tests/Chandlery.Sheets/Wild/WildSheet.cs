namespace Chandlery.Sheets.Wild;

/// <summary>A random document and what it says.</summary>
/// <param name="Seed">The number that it came from.</param>
/// <param name="Kind">"sheet", "ifra" or "allergens".</param>
/// <param name="Layout">Name of its layout, for counting.</param>
/// <param name="Language">Language.</param>
/// <param name="Form">Paper.</param>
/// <param name="Blocks">What is printed.</param>
/// <param name="Truth">What it says.</param>
public sealed record WildSheet(
    int Seed,
    string Kind,
    string Layout,
    string Language,
    SheetForm Form,
    IReadOnlyList<Block> Blocks,
    WildTruth Truth
)
{
    /// <summary>Even seeds are for tuning the reader; odd ones are held back and only counted.</summary>
    public bool IsSeen => Seed % 2 == 0;
}

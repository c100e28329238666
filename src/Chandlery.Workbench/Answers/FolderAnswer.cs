namespace Chandlery.Workbench.Answers;

/// <summary>The opened folder at a glance.</summary>
/// <param name="Folder">Its name; null for the example.</param>
/// <param name="Maker">The maker declared in it; null when there is none.</param>
/// <param name="Supplies">What it declares beside candles, by kind.</param>
/// <param name="NextFormulation">A formulation number that no candle of the folder has or had.</param>
/// <param name="Undo">What would be taken back next; null for nothing.</param>
/// <param name="Redo">What would be done again next; null for nothing.</param>
/// <param name="Problems">What is wrong with its files.</param>
internal sealed record FolderAnswer(
    string? Folder,
    string? Maker,
    IReadOnlyDictionary<string, IReadOnlyList<SupplyLine>> Supplies,
    long NextFormulation,
    string? Undo,
    string? Redo,
    IReadOnlyList<string> Problems
);

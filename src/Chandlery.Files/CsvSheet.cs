namespace Chandlery.Files;

/// <summary>A table as it was read.</summary>
/// <param name="Separator">What stands between its cells.</param>
/// <param name="Rows">Its rows that are not empty; the first has the names of the columns.</param>
internal sealed record CsvSheet(char Separator, IReadOnlyList<IReadOnlyList<CsvCell>> Rows);

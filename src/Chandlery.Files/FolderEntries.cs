using Chandlery.Core.Asked.Comparisons;

namespace Chandlery.Files;

/// <summary>What came of assessing a folder.</summary>
/// <typeparam name="T">What is kept of an assessment.</typeparam>
/// <param name="Entries">One entry for each candle and batch that could be read, in the order of the files, batches last.</param>
/// <param name="Report">What is wrong with the files, and with the candles.</param>
public sealed record FolderEntries<T>(IReadOnlyList<CatalogueEntry<T>> Entries, FolderReport Report);

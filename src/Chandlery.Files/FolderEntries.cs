using Chandlery.Core.Asked.Comparisons;
using Chandlery.Yaml;

namespace Chandlery.Files;

/// <summary>What came of assessing a folder.</summary>
/// <typeparam name="T">What is kept of an assessment.</typeparam>
/// <param name="Entries">One entry for each candle and batch that could be read, in the order of the files, batches last.</param>
/// <param name="Problems">What is wrong with the files.</param>
public sealed record FolderEntries<T>(IReadOnlyList<CatalogueEntry<T>> Entries, IReadOnlyList<Problem> Problems);

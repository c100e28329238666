using Chandlery.Core.Asked.Comparisons;

namespace Chandlery.Workbench.Answers;

/// <summary>The opened folder at a glance.</summary>
/// <param name="Folder">Its name.</param>
/// <param name="Maker">The maker declared in it; null when there is none.</param>
/// <param name="Rows">A line for each candle and batch under each edition of the law.</param>
/// <param name="Problems">What is wrong with its files.</param>
internal sealed record CatalogueAnswer(string Folder, string? Maker, IReadOnlyList<CatalogueRow> Rows, IReadOnlyList<string> Problems);

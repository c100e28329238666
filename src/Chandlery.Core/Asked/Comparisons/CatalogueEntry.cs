using Chandlery.Yaml;

namespace Chandlery.Core.Asked.Comparisons;

/// <summary>A candle of a catalogue: what was kept of its assessments, or what is wrong with it.</summary>
/// <typeparam name="T">What is kept of an assessment; a catalogue of thousands does not keep them whole.</typeparam>
/// <param name="Id">Its name.</param>
/// <param name="Place">Where it is declared.</param>
/// <param name="Results">One for each edition; empty when there are problems.</param>
/// <param name="Problems">What is wrong.</param>
public sealed record CatalogueEntry<T>(string Id, TextPlace Place, IReadOnlyList<T> Results, IReadOnlyList<Problem> Problems);

using Chandlery.Core.Asked.Comparisons;

namespace Chandlery.Workbench.Answers;

/// <summary>A candle or batch that changes.</summary>
/// <param name="Change">What begins and ends.</param>
/// <param name="Name">Trade name; null for a batch.</param>
/// <param name="Batches">Its batches, which were made as it is now.</param>
internal sealed record ChangedCandle(CandleChange Change, string? Name, IReadOnlyList<SoldBatch> Batches);

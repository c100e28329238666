using Chandlery.Core.Declared;

namespace Chandlery.Core.SafetyFiles.Recalls;

/// <summary>A batch that a recall reaches.</summary>
/// <param name="Batch">The batch.</param>
/// <param name="Candle">Its candle.</param>
/// <param name="Why">Why it is reached.</param>
/// <param name="IsCertain">False where it only cannot be ruled out.</param>
/// <param name="Dispatches">Where its candles went, oldest first.</param>
public sealed record AffectedBatch(Batch Batch, Candle Candle, string Why, bool IsCertain, IReadOnlyList<Dispatch> Dispatches)
{
    /// <summary>How many went out.</summary>
    public int Dispatched => Dispatches.Sum(d => d.Pieces);

    /// <summary>How many must still be with the maker; null where it is not noted how many were made.</summary>
    public int? Left => Batch.Made - Dispatched;
}

namespace Chandlery.Core.Law;

/// <summary>What a note of the table means for a mixture.</summary>
/// <param name="Note">Its letter or figure.</param>
/// <param name="Means">Its meaning in a half sentence of ours.</param>
/// <param name="Lets">Hazard groups whose classes may be left off where the note's condition is shown to hold; empty for most notes.</param>
/// <param name="IsTold">True for what is not computed and must be told of every candle with such a substance.</param>
public sealed record AnnexNote(string Note, string Means, IReadOnlyList<string> Lets, bool IsTold)
{
    /// <summary>States of a mixture in which those classes do not count at all; none for most notes.</summary>
    public IReadOnlyList<PhysicalState> NotIn { get; init; } = [];
}

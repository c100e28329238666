using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Composed;

/// <summary>A substance in the finished candle, summed over all oils, waxes and extras.</summary>
/// <param name="Identity">Which substance; name and numbers of the first line that had them.</param>
/// <param name="Low">Low end, percent of the finished candle.</param>
/// <param name="High">High end, percent of the finished candle. Classification rests on it.</param>
/// <param name="WholeHigh">
/// For a natural complex ingredient with declared constituents: the high end of its whole share, where
/// <paramref name="High"/> is only what its constituents leave. The same as <paramref name="High"/> otherwise.
/// </param>
/// <param name="Parts">Where it comes from.</param>
public sealed record ComposedIngredient(
    SubstanceIdentity Identity,
    MassPercent Low,
    MassPercent High,
    MassPercent WholeHigh,
    IReadOnlyList<Contribution> Parts
)
{
    /// <summary>True when this is what the declared constituents of a natural complex ingredient leave.</summary>
    public bool IsRemainder => WholeHigh.Value > High.Value;
}

using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Composed;

/// <summary>What is in the finished candle.</summary>
/// <param name="Recipe">The masses.</param>
/// <param name="Ingredients">Substances, largest first.</param>
/// <param name="UnknownLow">Least share that nobody has declared, percent of the finished candle.</param>
/// <param name="UnknownHigh">Greatest share that nobody has declared.</param>
/// <param name="Remarks">What a reviewer should look at: names and numbers that do not agree.</param>
public sealed record Composition(
    Recipe Recipe,
    IReadOnlyList<ComposedIngredient> Ingredients,
    MassPercent UnknownLow,
    MassPercent UnknownHigh,
    IReadOnlyList<string> Remarks
)
{
    // Below this (percent) the undeclared rest is a rounding of the suppliers' sheets. Our own choice: no law sets it.
    private const double RoundingPercent = 0.005;

    /// <summary>What was measured of a finished liquid; null when nothing is declared, and for solids.</summary>
    public LiquidFacts? Liquid { get; init; }

    /// <summary>Whether more may be undeclared than a rounding of the suppliers' sheets.</summary>
    public bool HasUndeclared => IsMoreThanRounding(UnknownHigh);

    /// <summary>Whether an undeclared share is more than a rounding of the suppliers' sheets.</summary>
    public static bool IsMoreThanRounding(MassPercent undeclared) => undeclared.Value > RoundingPercent;
}

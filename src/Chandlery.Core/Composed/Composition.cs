using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Composed;

/// <summary>Where a part of an ingredient comes from.</summary>
/// <param name="Product">The oil, wax or extra.</param>
/// <param name="Document">Reference and date of its sheet; empty for waxes and extras.</param>
/// <param name="ProductShare">Share of the product in the finished candle.</param>
/// <param name="DeclaredShare">The ingredient's share of the product, as declared.</param>
/// <param name="Low">Low end of this part, percent of the finished candle.</param>
/// <param name="High">High end of this part, percent of the finished candle.</param>
/// <param name="Ingredient">The declared line.</param>
public sealed record Contribution(
    string Product,
    string Document,
    MassPercent ProductShare,
    string DeclaredShare,
    MassPercent Low,
    MassPercent High,
    Ingredient Ingredient
);

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

/// <summary>An oil's share of the finished candle.</summary>
/// <param name="Oil">The oil.</param>
/// <param name="Share">Percent of the finished candle.</param>
/// <param name="ShareOfBlend">Percent of the oil blend.</param>
public sealed record OilShare(Oil Oil, MassPercent Share, MassPercent ShareOfBlend);

/// <summary>A wax's share of the finished candle.</summary>
/// <param name="Wax">A plain wax, never a blend.</param>
/// <param name="Share">Percent of the finished candle.</param>
public sealed record WaxShare(Wax Wax, MassPercent Share);

/// <summary>An extra's share.</summary>
/// <param name="Extra">The extra.</param>
/// <param name="Share">Percent of the finished candle.</param>
/// <param name="OfWax">Percent of the wax in the scented melt.</param>
public sealed record ExtraShare(Extra Extra, MassPercent Share, MassPercent OfWax);

/// <summary>The masses of a candle, relative to each other.</summary>
/// <param name="Oils">Oils.</param>
/// <param name="Waxes">Waxes of both pours.</param>
/// <param name="Extras">Extras.</param>
/// <param name="MeltLoadOfWax">Oil per 100 parts of wax in the scented melt.</param>
/// <param name="MeltLoadOfCandle">Oil in 100 parts of the scented melt.</param>
/// <param name="Load">Oil in 100 parts of the finished candle, after an unscented second pour.</param>
/// <param name="TopUp">Share of the unscented second pour; zero when there is none.</param>
public sealed record Recipe(
    IReadOnlyList<OilShare> Oils,
    IReadOnlyList<WaxShare> Waxes,
    IReadOnlyList<ExtraShare> Extras,
    MassPercent MeltLoadOfWax,
    MassPercent MeltLoadOfCandle,
    MassPercent Load,
    MassPercent TopUp
);

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
);

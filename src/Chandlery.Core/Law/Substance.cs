using Chandlery.Core.Composed;
using Chandlery.Core.Declared;

namespace Chandlery.Core.Law;

/// <summary>A hazard of a substance as the rules use it.</summary>
/// <param name="Category">The category.</param>
/// <param name="Statement">Its statement, with the letters that say more (H361d).</param>
/// <param name="Limits">Specific limits within the same group.</param>
/// <param name="MilderLimitsCount">Whether a specific limit above the general one may replace it: only when every source gives it.</param>
/// <param name="M">M-factor; 1 when none applies or none is known.</param>
/// <param name="MIsKnown">False when the class calls for an M-factor and nobody gave one.</param>
/// <param name="Source">Whose word this is.</param>
public sealed record SubstanceHazard(
    HazardCategory Category,
    string Statement,
    IReadOnlyList<SpecificLimit> Limits,
    bool MilderLimitsCount,
    double M,
    bool MIsKnown,
    string Source
);

/// <summary>A substance in the candle with the hazards that count in one edition on one day.</summary>
/// <param name="Ingredient">The substance and its share.</param>
/// <param name="IsKnown">False when nobody says anything about its hazards.</param>
/// <param name="Hazards">Its hazards.</param>
/// <param name="Toxicity">Acute toxicity estimates, the lowest per route.</param>
/// <param name="Name">Name to print: a recognised one where there is one.</param>
/// <param name="NonAdditiveKind">Kind of substance whose irritation may not add up, such as aldehyde; null for others.</param>
/// <param name="Remarks">Where sources disagree or a harmonised class overrides.</param>
public sealed record Substance(
    ComposedIngredient Ingredient,
    bool IsKnown,
    IReadOnlyList<SubstanceHazard> Hazards,
    IReadOnlyList<ToxicityEstimate> Toxicity,
    string Name,
    string? NonAdditiveKind,
    IReadOnlyList<string> Remarks
);

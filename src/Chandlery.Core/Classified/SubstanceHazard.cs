using Chandlery.Core.Hazards;

namespace Chandlery.Core.Classified;

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

using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>What a rung counts.</summary>
/// <param name="Hazards">Substances with one of these hazards.</param>
/// <param name="Weight">Factor on their share.</param>
/// <param name="M">M-factor on their share.</param>
/// <param name="IgnoreBelow">Shares below do not count; zero when all count.</param>
/// <param name="IgnoreBelowDividedBy">The M-factor that divides <paramref name="IgnoreBelow"/>, also where the share itself is not multiplied.</param>
public sealed record Term(
    IReadOnlyList<HazardCategory> Hazards,
    double Weight,
    MFactorKind M,
    MassPercent IgnoreBelow,
    MFactorKind IgnoreBelowDividedBy
);

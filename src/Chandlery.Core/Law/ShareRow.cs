using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>From which share a substance with one of these hazards counts.</summary>
/// <param name="Hazards">The hazards.</param>
/// <param name="From">The share of the mixture (inclusive).</param>
/// <param name="OwnLimitTimes">A substance's own specific limit, times this, lowers the share; 0 when it does not.</param>
/// <param name="DividedBy">The M-factor that divides the share.</param>
/// <param name="Clause">Where it stands.</param>
/// <param name="Confidence">How the row was checked.</param>
public sealed record ShareRow(
    IReadOnlyList<HazardCategory> Hazards,
    MassPercent From,
    double OwnLimitTimes,
    MFactorKind DividedBy,
    Citation Clause,
    string Confidence
);

using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>When a package for the public must have a feature, whatever its size.</summary>
/// <param name="Feature">The feature.</param>
/// <param name="Hazards">Classes of the mixture that call for it.</param>
/// <param name="Cas">CAS numbers of substances that call for it.</param>
/// <param name="From">The share of the mixture from which such a substance does.</param>
/// <param name="Standard">What the feature must meet.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record PackagingDuty(
    PackagingFeature Feature,
    IReadOnlyList<HazardCategory> Hazards,
    IReadOnlyList<string> Cas,
    MassPercent From,
    string Standard,
    Citation Clause
);

using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>One category of acute toxicity.</summary>
/// <param name="Result">The category.</param>
/// <param name="UpTo">Upper bound of the estimate by form (inclusive), in the route's unit.</param>
/// <param name="PointEstimate">Estimate to use for a substance known only by category, by form.</param>
/// <param name="IgnoreBelow">Shares below do not count.</param>
public sealed record ToxicityBound(
    HazardCategory Result,
    IReadOnlyDictionary<ExposureRoute, double> UpTo,
    IReadOnlyDictionary<ExposureRoute, double> PointEstimate,
    MassPercent IgnoreBelow
);

using Chandlery.Core.Quantities;

namespace Chandlery.Core.Hazards;

/// <summary>A specific concentration limit: from <paramref name="From"/> on, a mixture gets <paramref name="Category"/>.</summary>
/// <param name="Category">The category that the mixture gets.</param>
/// <param name="From">Lower limit, percent by mass of the mixture.</param>
/// <param name="Below">Upper end of the range, when one is printed.</param>
public sealed record SpecificLimit(HazardCategory Category, MassPercent From, MassPercent? Below);

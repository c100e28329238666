using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>A liquid that does not sustain combustion in the law's test need not have a category.</summary>
/// <param name="Result">The category that it need not have.</param>
/// <param name="FlashAbove">Only where the flash point lies above this.</param>
/// <param name="Test">The test.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record CombustionRelief(HazardCategory Result, Celsius FlashAbove, string Test, Citation Clause);

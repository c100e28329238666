using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>What must be in a mixture for a step to be looked at.</summary>
/// <param name="Hazards">A substance with one of these hazards.</param>
/// <param name="From">Its least share.</param>
public sealed record RungCondition(IReadOnlyList<HazardCategory> Hazards, MassPercent From);

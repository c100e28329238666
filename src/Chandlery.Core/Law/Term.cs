using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>What a rung counts.</summary>
/// <param name="Hazards">Substances with one of these hazards.</param>
/// <param name="Weight">Factor on their share.</param>
/// <param name="M">M-factor on their share.</param>
/// <param name="IgnoreBelow">Shares below do not count; zero when all count.</param>
public sealed record Term(IReadOnlyList<HazardCategory> Hazards, double Weight, MWeight M, MassPercent IgnoreBelow);

using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>One burn of a sample; what was not measured is null.</summary>
/// <param name="Hours">How long.</param>
/// <param name="Flame">Height of the highest flame.</param>
/// <param name="Pool">Diameter of the melt pool.</param>
/// <param name="VesselHeat">Highest temperature of the vessel's outside.</param>
/// <param name="Soot">How much soot was seen.</param>
/// <param name="Relit">Whether it lit again by itself after it was put out.</param>
public sealed record Burn(double Hours, Millimetres? Flame, Millimetres? Pool, Celsius? VesselHeat, SootSeen? Soot, bool? Relit);

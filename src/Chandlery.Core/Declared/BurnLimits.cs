using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>The maker's own limits for burn tests; null where none is set.</summary>
/// <param name="Flame">The highest flame allowed.</param>
/// <param name="VesselHeat">The highest temperature of the vessel allowed.</param>
/// <param name="Soot">The most soot allowed.</param>
/// <param name="SlopeDegrees">The slope on which it must not fall.</param>
public sealed record BurnLimits(Millimetres? Flame, Celsius? VesselHeat, SootSeen? Soot, double? SlopeDegrees);

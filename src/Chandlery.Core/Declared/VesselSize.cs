using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>Room inside or outside a vessel.</summary>
/// <param name="Section">Its level cross-section.</param>
/// <param name="Height">Height.</param>
public sealed record VesselSize(CrossSection Section, Millimetres Height);

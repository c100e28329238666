using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>Room inside or outside a vessel: round with a diameter, or rectangular with two sides.</summary>
/// <param name="Diameter">Diameter of a round vessel; null when rectangular.</param>
/// <param name="Length">Long side of a rectangular vessel; null when round.</param>
/// <param name="Width">Short side of a rectangular vessel; null when round.</param>
/// <param name="Height">Height.</param>
public sealed record VesselSize(Millimetres? Diameter, Millimetres? Length, Millimetres? Width, Millimetres Height)
{
    /// <summary>Length around the level cross-section, millimetres.</summary>
    public double PerimeterMillimetres => Diameter is { } d ? Math.PI * d.Value : 2 * (Length!.Value.Value + Width!.Value.Value);

    /// <summary>Area of the level cross-section, square millimetres.</summary>
    public double CrossSectionSquareMillimetres =>
        Diameter is { } d ? Math.PI * d.Value * d.Value / 4 : Length!.Value.Value * Width!.Value.Value;
}

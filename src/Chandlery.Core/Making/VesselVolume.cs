using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Making;

/// <summary>What a vessel holds by the size of its inside, for whoever has not measured it with water.</summary>
public static class VesselVolume
{
    /// <summary>Volume to the brim of a vessel with upright walls of that size; null when the inside is not declared.</summary>
    public static Millilitres? ByGeometry(Vessel vessel) =>
        vessel is { Inner: { } inner, AreaInside: { } area } ? new Millilitres(area * inner.Height.Value / 1000) : null;
}

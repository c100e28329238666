using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>How much of a vessel is filled.</summary>
internal static class Contents
{
    /// <summary>
    /// The contents of the package: up to the fill line, or what the net quantity takes where that is more. Without a fill line the
    /// vessel is taken as full to the brim.
    /// </summary>
    /// <param name="vessel">The vessel.</param>
    /// <param name="candle">Whose nominal quantity it is.</param>
    /// <param name="wax">The wax, whose cold density counts when it is declared.</param>
    public static Millilitres Of(Vessel vessel, Candle candle, Wax wax)
    {
        if (vessel.Fill is not { } fill)
        {
            return vessel.Brimful;
        }

        double taken =
            candle.NetVolume is { } volume ? volume.Value
            : wax.SolidDensity is { } density ? candle.NetMass.Value / density.Value
            : 0;
        return new Millilitres(Math.Max(fill.Value, taken));
    }
}

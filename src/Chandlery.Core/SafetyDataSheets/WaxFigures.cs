using Chandlery.Core.Composed;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.SafetyDataSheets;

/// <summary>What waxes and dyes say of the finished candle's properties, for section 9.</summary>
internal static class WaxFigures
{
    /// <summary>Lowest and highest melting point; null when a wax has none declared.</summary>
    public static (Celsius Low, Celsius High)? Melting(Recipe recipe) =>
        Ends(recipe.Waxes.Select(w => w.Wax.MeltingPoint?.Value)) is { } ends ? (new Celsius(ends.Low), new Celsius(ends.High)) : null;

    /// <summary>Lowest and highest density of the set wax; null when a wax has none declared.</summary>
    public static (GramsPerMillilitre Low, GramsPerMillilitre High)? Density(Recipe recipe) =>
        Ends(recipe.Waxes.Select(w => w.Wax.SolidDensity?.Value)) is { } ends
            ? (new GramsPerMillilitre(ends.Low), new GramsPerMillilitre(ends.High))
            : null;

    /// <summary>Names of the dyes.</summary>
    public static IReadOnlyList<string> Dyes(Recipe recipe) =>
        [.. recipe.Extras.Select(e => e.Extra).Where(e => e.IsDye).Select(e => e.Name)];

    private static (double Low, double High)? Ends(IEnumerable<double?> values)
    {
        List<double?> all = [.. values];
        return all.Count == 0 || all.Contains(null) ? null : (all.Min()!.Value, all.Max()!.Value);
    }
}

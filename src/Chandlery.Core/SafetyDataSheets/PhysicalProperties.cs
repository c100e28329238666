using Chandlery.Core.Assessed;
using Chandlery.Core.Composed;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.SafetyDataSheets;

/// <summary>Section 9.1: the eighteen properties of REACH Annex II, in their order, each with a figure or the reason why there is none.</summary>
internal static class PhysicalProperties
{
    private const string NoTest = "no data available (not tested on the candle)";
    private const string Solid = "not applicable (solid)";

    public static SheetTable Table(Assessment a) =>
        new(
            [38, 62],
            [],
            [
                ["Physical state", "solid (a set candle in its vessel)"],
                ["Colour", Colour(a)],
                ["Odour", "of its fragrance"],
                ["Melting point/freezing point", Melting(a)],
                ["Boiling point or initial boiling point and boiling range", NoTest],
                ["Flammability", "burns with a wick; whether it is a flammable solid was not tested"],
                ["Lower and upper explosion limit", Solid],
                ["Flash point", Flash(a)],
                ["Auto-ignition temperature", NoTest],
                ["Decomposition temperature", NoTest],
                ["pH", "not applicable (does not dissolve in water)"],
                ["Kinematic viscosity", Solid],
                ["Solubility", "practically insoluble in water (common practice, no source)"],
                ["Partition coefficient n-octanol/water (log value)", "not applicable (mixture)"],
                ["Vapour pressure", NoTest],
                ["Density and/or relative density", Density(a)],
                ["Relative vapour density", Solid],
                ["Particle characteristics", "not applicable (a cast body, no powder)"],
            ]
        );

    private static string Colour(Assessment a)
    {
        List<string> dyes =
        [
            .. a
                .Composition.Recipe.Extras.Select(e => e.Extra)
                .Where(e => e.Purpose.Contains("dye", StringComparison.OrdinalIgnoreCase))
                .Select(e => e.Name),
        ];
        return dyes.Count > 0 ? $"dyed with {string.Join(", ", dyes)}" : "that of the wax (no dye declared)";
    }

    private static string Melting(Assessment a)
    {
        List<Celsius?> points = [.. a.Composition.Recipe.Waxes.Select(w => w.Wax.MeltingPoint)];
        if (points.Count == 0 || points.Any(p => p is null))
        {
            return "no data available (not declared for every wax)";
        }

        double low = points.Min(p => p!.Value.Value);
        double high = points.Max(p => p!.Value.Value);
        return low == high
            ? $"about {Figures.Plain(low)} °C (the wax)"
            : $"about {Figures.Plain(low)} to {Figures.Plain(high)} °C (the waxes)";
    }

    private static string Flash(Assessment a)
    {
        List<string> oils =
        [
            .. a
                .Composition.Recipe.Oils.Select(o => o.Oil)
                .Select(o => $"{o.Name} {(o.FlashPoint is { } flash ? flash.ToString() : "not declared")}"),
        ];
        return $"no data available for the candle; the fragrance oils before mixing: {string.Join(", ", oils)}";
    }

    private static string Density(Assessment a)
    {
        IReadOnlyList<WaxShare> waxes = a.Composition.Recipe.Waxes;
        if (waxes.Count == 0 || waxes.Any(w => w.Wax.SolidDensity is null))
        {
            return "no data available (not declared for every wax)";
        }

        double low = waxes.Min(w => w.Wax.SolidDensity!.Value.Value);
        double high = waxes.Max(w => w.Wax.SolidDensity!.Value.Value);
        return low == high
            ? $"about {Figures.Plain(low)} g/ml (the wax)"
            : $"about {Figures.Plain(low)} to {Figures.Plain(high)} g/ml (the waxes)";
    }
}

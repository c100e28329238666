using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Limits;

/// <summary>Checks a candle against every limit that its declarations name.</summary>
public static class LimitChecker
{
    /// <summary>All checks.</summary>
    public static IReadOnlyList<LimitCheck> Check(Candle candle, LimitedAs kind, Vessel vessel, Wax wax, Recipe recipe)
    {
        List<LimitCheck> checks = [.. OfBlend(kind, wax, recipe, candle.Temperatures.AddFragrance)];
        checks.AddRange(recipe.Extras.Where(e => e.Extra.Highest is not null).Select(ExtraShare));
        checks.AddRange(
            candle.NetVolume is { } volume ? [LiquidVolume(volume, vessel)]
            : candle.Vessel is null ? []
            : [Volume(candle, kind, vessel, wax)]
        );
        return checks;
    }

    /// <summary>The checks of the oils in their wax or base, whatever the vessel.</summary>
    /// <param name="kind">As what sort of product.</param>
    /// <param name="wax">The wax or base.</param>
    /// <param name="recipe">What is in it.</param>
    /// <param name="adding">The temperature at which the oil is added; null when not declared.</param>
    public static IEnumerable<LimitCheck> OfBlend(LimitedAs kind, Wax wax, Recipe recipe, Celsius? adding)
    {
        if (recipe.Oils.Count == 0)
        {
            return [];
        }

        // A liquid is mixed cold.
        IEnumerable<LimitCheck> flashPoints = wax.IsBase ? [] : recipe.Oils.Select(o => FlashPoint(o.Oil, adding));
        IEnumerable<LimitCheck> ifra = kind.IfraCategory is { } category
            ? [.. recipe.Oils.Select(o => Ifra(o, category, kind)), IfraBlend(recipe, category)]
            : [NoCategory(kind)];
        return [WaxLoad(wax, recipe), .. recipe.Oils.Select(o => OilLoad(o, recipe, wax.IsBase)), .. ifra, .. flashPoints];
    }

    private static LimitCheck WaxLoad(Wax wax, Recipe recipe)
    {
        string name = $"load against {wax.Name}";
        if (wax.HighestLoad is not { } highest)
        {
            return Unknown(name, wax.Supplier, $"The highest load of {wax.Name} is not declared.");
        }

        double value = InBasis(highest.Basis, recipe);
        return Compare(
            name,
            value,
            highest.Percent.Value,
            UnitOf(highest.Basis, wax.IsBase),
            wax.Supplier,
            wax.IsBase
                ? "More oil than the base dissolves parts from it."
                : "More oil than the wax holds sweats out, burns badly or catches fire."
        );
    }

    private static LimitCheck OilLoad(OilShare oil, Recipe recipe, bool isLiquid)
    {
        string name = $"load of {oil.Oil.Name} against its maker's limit";
        if (oil.Oil.HighestLoad is not { } highest)
        {
            return Unknown(name, oil.Oil.Supplier, $"The highest load of {oil.Oil.Name} is not declared.");
        }

        if (isLiquid && highest.Basis == LoadBasis.Wax)
        {
            return Unknown(
                name,
                oil.Oil.Supplier,
                $"The highest load of {oil.Oil.Name} is declared for wax; ask what its maker allows in a liquid."
            );
        }

        double value = InBasis(highest.Basis, recipe) * oil.ShareOfBlend.Value / 100;
        return Compare(
            name,
            value,
            highest.Percent.Value,
            UnitOf(highest.Basis, isLiquid),
            oil.Oil.Supplier,
            "The fragrance house does not stand behind more."
        );
    }

    private static LimitCheck NoCategory(LimitedAs kind) =>
        Unknown(
            "IFRA category",
            "all oils",
            $"Which category a {kind.Name} is in stands on the oils' certificates: write it under 'ifraCategory'."
        );

    private static LimitCheck Ifra(OilShare oil, string category, LimitedAs kind)
    {
        string name = $"IFRA category {category}, {oil.Oil.Name}";
        if (oil.Oil.Ifra is not { } certificate || !certificate.Limits.TryGetValue(category, out IfraLimit? limit))
        {
            return Unknown(name, oil.Oil.Supplier, $"No IFRA certificate for category {category} is declared for {oil.Oil.Name}.");
        }

        return Compare(
            name,
            oil.Share.Value,
            limit.Highest.Value,
            kind.Burns ? "% of candle" : "% of product",
            $"{oil.Oil.Supplier}, IFRA amendment {certificate.Amendment} of {certificate.Date:yyyy-MM-dd}",
            "A code of the fragrance trade, no law; the certificate gives the highest share of the finished product."
        );
    }

    // Oils may share a restricted substance, so each oil's use of its own allowance is added.
    private static LimitCheck IfraBlend(Recipe recipe, string category)
    {
        string name = $"IFRA category {category}, all oils together";
        var limits = recipe.Oils.Select(o => o.Oil.Ifra?.Limits.GetValueOrDefault(category)?.Highest.Value).ToList();
        if (limits.Any(l => l is null))
        {
            return Unknown(name, "all oils", "Not every oil has an IFRA certificate, so the blend could not be checked.");
        }

        double used = recipe
            .Oils.Zip(limits, (oil, limit) => limit == 0 ? double.PositiveInfinity : 100 * oil.Share.Value / limit!.Value)
            .Sum();
        return Compare(
            name,
            used,
            100,
            "% of the allowance",
            "all oils",
            "The sum of each oil's share over its own limit; stricter than each oil alone."
        );
    }

    private static LimitCheck FlashPoint(Oil oil, Celsius? adding)
    {
        string name = $"flash point of {oil.Name} against the temperature of adding";
        if (oil.FlashPoint is not { } flash || adding is not { } temperature)
        {
            string missing = oil.FlashPoint is null ? $"The flash point of {oil.Name} is" : "The temperature at which the oil is added is";
            return Unknown(name, oil.Supplier, $"{missing} not declared.");
        }

        string method = flash.Method is null ? "by a method that the sheet does not name" : flash.Method;
        string bound = flash.IsLowerBound ? "above " : "";
        return Compare(
            name,
            temperature.Value,
            flash.Temperature.Value,
            "°C",
            oil.Supplier,
            $"Flash point {bound}{flash.Temperature} ({method}): from there on the vapour over the pot can catch fire."
        ) with
        {
            // At the flash point itself there is no room left.
            Holds = temperature.Value < flash.Temperature.Value,
        };
    }

    private static LimitCheck ExtraShare(ExtraShare extra) =>
        Compare(
            $"share of {extra.Extra.Name} against its maker's limit",
            extra.OfWax.Value,
            extra.Extra.Highest!.Value.Value,
            "% of wax",
            extra.Extra.Supplier,
            "Its maker does not stand behind more."
        );

    private static LimitCheck LiquidVolume(Millilitres volume, Vessel vessel) =>
        Compare(
            "volume of the liquid against its vessel",
            volume.Value,
            vessel.Fill?.Value ?? vessel.Brimful.Value,
            "ml",
            vessel.Name,
            "A liquid that is filled to the brim leaks when it gets warm."
        );

    private static LimitCheck Volume(Candle candle, LimitedAs kind, Vessel vessel, Wax wax)
    {
        string name = kind.Burns
            ? "volume of the molten candle against the vessel below its headspace"
            : "volume of the molten wax against the vessel below its headspace";
        if (wax.LiquidDensity is not { } density)
        {
            return Unknown(name, wax.Supplier, $"The density of molten {wax.Name} is not declared.");
        }

        Millilitres? below = candle.Headspace is { } headspace ? vessel.Below(headspace) : vessel.Brimful;
        if (below is not { } free)
        {
            return Unknown(name, vessel.Name, $"A headspace is asked for, but the inner size of {vessel.Name} is not declared.");
        }

        return Compare(
            name,
            density.VolumeOf(candle.NetMass).Value,
            Math.Min(free.Value, vessel.Fill?.Value ?? double.PositiveInfinity),
            "ml",
            vessel.Name,
            kind.Burns ? "What does not fit runs over; a flame too near the brim heats the vessel." : "What does not fit runs over."
        );
    }

    private static double InBasis(LoadBasis basis, Recipe recipe) =>
        basis == LoadBasis.Wax ? recipe.MeltLoadOfWax.Value : recipe.MeltLoadOfCandle.Value;

    private static string UnitOf(LoadBasis basis, bool isLiquid) =>
        (basis, isLiquid) switch
        {
            (LoadBasis.Wax, false) => "% of wax",
            (LoadBasis.Wax, true) => "% of base",
            (_, false) => "% of candle",
            _ => "% of product",
        };

    private static LimitCheck Compare(string name, double value, double limit, string unit, string source, string explanation) =>
        new(name, value, limit, unit, value <= limit * (1 + MassPercent.RelativeTolerance), source, explanation);

    private static LimitCheck Unknown(string name, string source, string explanation) =>
        new(name, null, null, "", null, source, explanation);
}

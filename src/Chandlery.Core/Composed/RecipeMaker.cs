using System.Diagnostics;
using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Composed;

/// <summary>Turns a candle's plan, or a batch as weighed, into shares of the finished candle.</summary>
public static class RecipeMaker
{
    /// <summary>The shares of a planned candle.</summary>
    /// <param name="candle">The plan.</param>
    /// <param name="catalogue">Where its oils, waxes and extras are.</param>
    /// <param name="problems">Collects what is missing or contradicts itself.</param>
    /// <returns>The recipe, or null when there are problems.</returns>
    public static Recipe? FromPlan(Candle candle, Catalogue catalogue, Problems problems)
    {
        Wax? wax = catalogue.Find<Wax>(candle.Wax, problems);
        List<(Oil Oil, double Mass)>? oils = Masses(candle.Oils, catalogue, problems);
        if (wax is null || oils is null)
        {
            return null;
        }

        // Everything is reckoned for 100 g of wax in the scented melt unless the plan weighs it.
        double waxMass = candle.WaxWeight?.Value ?? 100;
        List<(Extra Extra, double Mass)>? extras = ExtraMasses(candle.Extras, waxMass, catalogue, problems);
        if (extras is null)
        {
            return null;
        }

        double extraMass = extras.Sum(e => e.Mass);
        double blend = oils.Sum(o => o.Mass);
        double oilMass = candle.Load is { } load ? OilFor(load, waxMass, extraMass) : blend;
        double melt = waxMass + extraMass + oilMass;
        double topUp = candle.TopUp switch
        {
            PlainTopUp { Amount: RelativeAmount { Percent: var percent } } => melt * percent.Value / (100 - percent.Value),
            PlainTopUp { Amount: WeighedAmount { Weight: var weight } } => TopUpForPlan(candle, weight, melt),
            _ => 0,
        };
        return Make(new RecipeMasses(wax, waxMass, oils, oilMass, extras, topUp), catalogue, problems);
    }

    /// <summary>The shares of oils tried together, in a wax and at a load, without extras or a second pour.</summary>
    /// <param name="parts">The oils, in drops, grams or millilitres; one at least.</param>
    /// <param name="wax">The wax.</param>
    /// <param name="load">How much of the blend goes into it.</param>
    /// <param name="catalogue">Where the oils are, and the waxes of a blend.</param>
    /// <param name="problems">Collects what is missing, such as the mass of a drop.</param>
    /// <returns>The recipe, or null when there are problems.</returns>
    public static Recipe? FromBlend(IReadOnlyList<OilPart> parts, Wax wax, FragranceLoad load, Catalogue catalogue, Problems problems)
    {
        const double waxMass = 100;
        return Masses(parts, catalogue, problems) is { } oils
            ? Make(new RecipeMasses(wax, waxMass, oils, OilFor(load, waxMass, 0), [], 0), catalogue, problems)
            : null;
    }

    /// <summary>The shares of a batch, from what was weighed.</summary>
    public static Recipe? FromBatch(Batch batch, Candle candle, Catalogue catalogue, Problems problems)
    {
        Wax? wax = catalogue.Find<Wax>(candle.Wax, problems);
        List<(Oil Oil, double Mass)>? oils = Masses(batch.Oils, catalogue, problems);
        List<(Extra Extra, double Mass)>? extras = ExtraMasses(batch.Extras, batch.WaxWeight.Value, catalogue, problems);
        if (wax is null || oils is null || extras is null)
        {
            return null;
        }

        double topUp = batch.TopUp is PlainTopUp { Amount: WeighedAmount { Weight: var weight } } ? weight.Value : 0;
        return Make(new RecipeMasses(wax, batch.WaxWeight.Value, oils, oils.Sum(o => o.Mass), extras, topUp), catalogue, problems);
    }

    private static double OilFor(FragranceLoad load, double waxMass, double extraMass) =>
        load.Basis == LoadBasis.Wax
            ? waxMass * load.Percent.Value / 100
            : (waxMass + extraMass) * load.Percent.Value / (100 - load.Percent.Value);

    // A top-up in grams belongs to one candle; when the melt is not weighed, the candle's net mass gives the scale.
    private static double TopUpForPlan(Candle candle, Grams topUp, double melt)
    {
        if (candle.WaxWeight is not null)
        {
            return topUp.Value;
        }

        double meltOfOneCandle = Math.Max(candle.NetMass.Value - topUp.Value, 1e-6);
        return melt * topUp.Value / meltOfOneCandle;
    }

    private static Recipe? Make(RecipeMasses masses, Catalogue catalogue, Problems problems)
    {
        double melt = masses.WaxMass + masses.OilMass + masses.Extras.Sum(e => e.Mass);
        double total = melt + masses.TopUp;
        double blend = masses.Oils.Sum(o => o.Mass);
        var waxes = new List<WaxShare>();
        if (!AddWax(masses.Wax, 100 * (masses.WaxMass + masses.TopUp) / total, catalogue, problems, waxes, 0))
        {
            return null;
        }

        return new Recipe(
            [
                .. masses.Oils.Select(o => new OilShare(
                    o.Oil,
                    new MassPercent(100 * masses.OilMass * (o.Mass / blend) / total),
                    new MassPercent(100 * o.Mass / blend)
                )),
            ],
            waxes,
            [
                .. masses.Extras.Select(e => new ExtraShare(
                    e.Extra,
                    new MassPercent(100 * e.Mass / total),
                    new MassPercent(100 * e.Mass / masses.WaxMass)
                )),
            ],
            new MassPercent(100 * masses.OilMass / masses.WaxMass),
            new MassPercent(100 * masses.OilMass / melt),
            new MassPercent(100 * masses.OilMass / total),
            new MassPercent(100 * masses.TopUp / total)
        );
    }

    private static bool AddWax(Wax wax, double percent, Catalogue catalogue, Problems problems, List<WaxShare> waxes, int depth)
    {
        if (depth > 8)
        {
            problems.Add(wax.Place, $"Wax '{wax.Id}' is blended of itself.");
            return false;
        }

        if (wax.Blend.Count == 0)
        {
            waxes.Add(new WaxShare(wax, new MassPercent(percent)));
            return true;
        }

        bool complete = true;
        foreach (WaxPart part in wax.Blend)
        {
            complete &=
                catalogue.Find<Wax>(part.Wax, problems) is { } inner
                && AddWax(inner, percent * part.Share.Value / 100, catalogue, problems, waxes, depth + 1);
        }

        return complete;
    }

    private static List<(Oil Oil, double Mass)>? Masses(IReadOnlyList<OilPart> parts, Catalogue catalogue, Problems problems)
    {
        var masses = new List<(Oil, double)>();
        bool complete = true;
        foreach (OilPart part in parts)
        {
            Oil? oil = catalogue.Find<Oil>(part.Oil, problems);
            double? mass = oil is null ? null : MassOf(part, oil, problems);
            if (mass is null)
            {
                complete = false;
                continue;
            }

            masses.Add((oil!, mass.Value));
        }

        return complete ? masses : null;
    }

    private static double? MassOf(OilPart part, Oil oil, Problems problems)
    {
        switch (part.Measure)
        {
            case OilMeasure.Millilitres when oil.Density is { } density:
                return density.MassOf(new Millilitres(part.Amount)).Value;
            case OilMeasure.Millilitres:
                problems.Add(
                    part.Place,
                    $"Oil '{oil.Id}' is measured in millilitres, but its density is not declared.",
                    $"Add 'densityGramsPerMl' to {oil.Place.File}, or weigh it."
                );
                return null;
            case OilMeasure.Drops when oil.DropMass is { } drop:
                return part.Amount * drop.Value;
            case OilMeasure.Drops:
                problems.Add(
                    part.Place,
                    $"Oil '{oil.Id}' is counted in drops, but the mass of its drop is not declared.",
                    $"Weigh 100 drops and add 'dropMilligrams' to {oil.Place.File}."
                );
                return null;
            default:
                return part.Amount;
        }
    }

    private static List<(Extra Extra, double Mass)>? ExtraMasses(
        IReadOnlyList<ExtraPart> parts,
        double waxMass,
        Catalogue catalogue,
        Problems problems
    )
    {
        var masses = new List<(Extra, double)>();
        bool complete = true;
        foreach (ExtraPart part in parts)
        {
            if (catalogue.Find<Extra>(part.Extra, problems) is { } extra)
            {
                double mass = part.Amount switch
                {
                    WeighedAmount weighed => weighed.Weight.Value,
                    RelativeAmount share => waxMass * share.Percent.Value / 100,
                    _ => throw new UnreachableException(),
                };
                masses.Add((extra, mass));
            }
            else
            {
                complete = false;
            }
        }

        return complete ? masses : null;
    }
}

using Chandlery.Core.Assessed;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Making;

/// <summary>Everything to weigh and mind for a number of candles.</summary>
public sealed record PouringPlan
{
    /// <summary>How many candles.</summary>
    public required int Count { get; init; }

    /// <summary>Allowance for what stays in the jug, percent.</summary>
    public required double WastePercent { get; init; }

    /// <summary>Mass of everything.</summary>
    public required Grams Total { get; init; }

    /// <summary>What goes into the scented melt.</summary>
    public required IReadOnlyList<Portion> FirstPour { get; init; }

    /// <summary>What goes into the second pour; empty when there is none or it comes from the same melt.</summary>
    public required IReadOnlyList<Portion> TopUp { get; init; }

    /// <summary>What goes into each vessel, the candle itself first.</summary>
    public required IReadOnlyList<SizePlan> Sizes { get; init; }

    /// <summary>First pour into one candle, as it is sold.</summary>
    public Grams FirstPourEach => Sizes[0].FirstEach;

    /// <summary>Second pour into one candle, as it is sold; zero when there is none.</summary>
    public Grams TopUpEach => Sizes[0].TopUpEach;

    /// <summary>Temperatures, in the order in which they happen.</summary>
    public required IReadOnlyList<TemperatureStep> Temperatures { get; init; }

    /// <summary>Times, in the order in which they pass.</summary>
    public required IReadOnlyList<TimeStep> Times { get; init; }

    /// <summary>Wicks.</summary>
    public required WickPlan Wicks { get; init; }

    /// <summary>Volumes.</summary>
    public required FillPlan Fill { get; init; }

    /// <summary>Most candles that one plan is made for.</summary>
    public const int MostCandles = 10_000;

    private const double MostWastePercent = 50;

    /// <summary>Plans a number of candles of one size.</summary>
    /// <param name="a">The candle, as planned or as a batch was weighed.</param>
    /// <param name="wax">Its wax or blend.</param>
    /// <param name="count">How many, from 1.</param>
    /// <param name="wastePercent">Allowance in percent of the mass, 0 to 50.</param>
    /// <exception cref="ArgumentOutOfRangeException">Count or allowance are outside their ranges.</exception>
    public static PouringPlan Make(Assessment a, Wax wax, int count, double wastePercent) =>
        Make(a, wax, new PourOrder(count, wastePercent));

    /// <summary>Plans a pour.</summary>
    /// <param name="a">The candle, as planned or as a batch was weighed.</param>
    /// <param name="wax">Its wax or blend.</param>
    /// <param name="order">
    /// What is poured; its other sizes are of the same melt (<see cref="MeltParts.WhyNotOne"/>), and its leftover can go into it
    /// (<see cref="LeftoverMelt.WhyNot"/>).
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException">A count or the allowance is outside its range.</exception>
    public static PouringPlan Make(Assessment a, Wax wax, PourOrder order)
    {
        Recipe recipe = a.Composition.Recipe;
        List<PourSize> sizes = [new PourSize(a.Candle, a.Vessel, recipe, order.Count), .. order.Also];
        foreach (PourSize size in sizes)
        {
            CheckCount(size.Count);
        }

        double melt = MeltFor(sizes, order.WastePercent).Value;
        double plain = sizes.Sum(s => s.Count * s.Candle.NetMass.Value * s.Recipe.TopUp.Value / 100) * Allowance(order.WastePercent);
        List<Portion> first =
        [
            .. MeltParts
                .Of(recipe)
                .Select(p => new Portion(
                    p.Name,
                    p.Kind,
                    new Grams(Math.Max(0, (melt * p.Fraction) - (order.Leftover?.GramsOf(p.Key) ?? 0)))
                )),
        ];
        if (order.Leftover is { } leftover)
        {
            first.Add(new Portion($"{leftover.Name}, melt left over", "leftover", leftover.Mass));
        }

        double waxes = recipe.Waxes.Sum(w => w.Share.Value);
        List<SizePlan> each = [.. sizes.Select(s => PlanSize(s, wax, order.Gap) with { Pieces = s.Vessel.Pieces })];
        return new PouringPlan
        {
            Count = order.Count,
            WastePercent = order.WastePercent,
            Total = new Grams(melt + plain),
            FirstPour = first,
            TopUp =
                plain > 0 ? [.. recipe.Waxes.Select(w => new Portion(w.Wax.Name, "wax", new Grams(plain * w.Share.Value / waxes)))] : [],
            Sizes = each,
            Temperatures = [.. Steps(a, recipe, order.Leftover)],
            Times = [.. a.Kind.Burns ? TimesOf(a.Candle, recipe) : TimesOfMelt(a.Candle, recipe)],
            Wicks = WickPlan.Of(a.Candle.Wicks, a.Vessel),
            Fill = PlanFill(a.Candle, a.Vessel, wax),
        };
    }

    /// <summary>How much scented melt sizes need, with the allowance.</summary>
    public static Grams MeltFor(IEnumerable<PourSize> sizes, double wastePercent) =>
        new(sizes.Sum(s => s.Count * s.Candle.NetMass.Value * (100 - s.Recipe.TopUp.Value) / 100) * Allowance(wastePercent));

    private const string CommonPractice = "common practice, no source";

    /// <summary>How much more is weighed for what stays in the jug, as a factor.</summary>
    /// <param name="wastePercent">Percent of the mass, 0 to 50.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is outside its range.</exception>
    internal static double Allowance(double wastePercent)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(wastePercent);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(wastePercent, MostWastePercent);
        return 1 + (wastePercent / 100);
    }

    /// <summary>Says that so many are too few or too many for one plan.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is outside its range.</exception>
    internal static void CheckCount(int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, MostCandles);
    }

    private static SizePlan PlanSize(PourSize size, Wax wax, Millimetres? gap)
    {
        double net = size.Candle.NetMass.Value;
        double plain = size.Recipe.TopUp.Value;
        double topUp = plain > 0 ? net * plain / 100 : HeldBack(size.Candle, net);
        if (gap is not { } left)
        {
            return new SizePlan(size.Candle.Name, size.Count, new Grams(net - topUp), new Grams(topUp), "");
        }

        if (FirstUpTo(size.Candle, size.Vessel, wax, left) is not { } first)
        {
            string why =
                "The gap cannot be reckoned: it needs the vessel's inside, a fill line or headspace, and the density of the molten wax.";
            return new SizePlan(size.Candle.Name, size.Count, new Grams(net - topUp), new Grams(topUp), why);
        }

        double rest = net - first.Value;
        string up = $"A first pour up to {left} below the fill line is {Rounded(first)}";
        if (rest <= 0)
        {
            return new SizePlan(
                size.Candle.Name,
                size.Count,
                new Grams(net - topUp),
                new Grams(topUp),
                $"{up}, which is more than the whole candle: the gap is too small, or the vessel is not filled."
            );
        }

        // A scented second pour whose amount nobody declared is what the gap leaves; every other is what the declaration says.
        return size.Candle.TopUp is ScentedTopUp { Amount: null }
            ? new SizePlan(
                size.Candle.Name,
                size.Count,
                first,
                new Grams(rest),
                $"{up}; the rest of {Rounded(new Grams(rest))} tops it up."
            )
            : new SizePlan(
                size.Candle.Name,
                size.Count,
                new Grams(net - topUp),
                new Grams(topUp),
                $"{up}, and {Rounded(new Grams(rest))} would top it up; "
                    + (
                        size.Candle.TopUp is null
                            ? "the candle declares no second pour: add 'topUp', for it is part of what is in the candle."
                        : topUp > 0 ? $"the candle declares {Rounded(new Grams(topUp))}, and that is what was assessed."
                        : "the candle declares another amount."
                    )
            );
    }

    private static Grams? FirstUpTo(Candle candle, Vessel vessel, Wax wax, Millimetres gap) =>
        RoomOf(candle, vessel) is { } room && vessel.AreaInside is { } area && wax.LiquidDensity is { } liquid
            ? liquid.MassOf(new Millilitres(Math.Max(0, room.Value - (area * gap.Value / 1000))))
            : null;

    private static string Rounded(Grams mass) => new Grams(Math.Round(mass.Value, mass.Value >= 1000 ? 0 : 1)).ToString();

    // Held back from the same melt: it dilutes nothing.
    private static double HeldBack(Candle candle, double net) =>
        candle.TopUp switch
        {
            ScentedTopUp { Amount: RelativeAmount { Percent: var percent } } => net * percent.Value / 100,
            ScentedTopUp { Amount: WeighedAmount { Weight: var weight } } => Math.Min(weight.Value, net),
            _ => 0,
        };

    private static IEnumerable<TemperatureStep> Steps(Assessment a, Recipe recipe, LeftoverMelt? leftover)
    {
        Candle candle = a.Candle;
        WorkingTemperatures t = candle.Temperatures;
        List<Oil> oils = [.. recipe.Oils.Select(o => o.Oil)];
        string again = leftover is { IsScented: true }
            ? $" The leftover holds oil: {FlashNote.Of(t.Melt, [.. leftover.Recipe.Oils.Select(o => o.Oil)])}"
            : "";
        yield return new TemperatureStep("Melt the wax", t.Melt, $"Never leave melting wax; use a water bath or a thermostat.{again}");
        if (oils.Count > 0)
        {
            yield return new TemperatureStep("Stir in the oil", t.AddFragrance, FlashNote.Of(t.AddFragrance, oils));
        }

        string ready =
            !a.Kind.Burns ? "Clean, dry shells that stand level; no hotter than their maker allows."
            : a.Vessel.IsMould ? "Warm, dry moulds; wicks centred and straight."
            : "Warm, dry vessels; wicks centred and straight.";
        yield return new TemperatureStep(
            "Pour",
            t.Pour,
            oils.Count > 0 && t.Pour is not null ? $"{ready} {FlashNote.Of(t.Pour, oils)}" : ready
        );
        if (candle.TopUp is { } topUp)
        {
            yield return new TemperatureStep(
                "Top up, when the first pour has set",
                t.TopUp,
                topUp is PlainTopUp ? "Plain wax: it dilutes the fragrance."
                    : oils.Count > 0 && t.TopUp is not null ? $"From the same scented melt. {FlashNote.Of(t.TopUp, oils)}"
                    : "From the same scented melt."
            );
        }
    }

    private static IEnumerable<TimeStep> TimesOf(Candle candle, Recipe recipe)
    {
        if (candle.TopUp is not null)
        {
            yield return new TimeStep("Set before the second pour", "until the next day", CommonPractice);
        }

        yield return new TimeStep("Set before it is moved", "a day, out of moving air", CommonPractice);
        if (recipe.Oils.Count > 0)
        {
            yield return new TimeStep("Cure before a burn test", "one to two weeks", CommonPractice);
        }

        yield return new TimeStep("Trim the wick before sale", $"to {candle.Wicks.TrimTo}", "as declared");
    }

    // No flame, no wick: what is left is setting and curing.
    private static IEnumerable<TimeStep> TimesOfMelt(Candle candle, Recipe recipe)
    {
        if (candle.TopUp is not null)
        {
            yield return new TimeStep("Set before the second pour", "until it is firm", CommonPractice);
        }

        yield return new TimeStep("Set before the shells are closed", "until firm and cold to the touch", CommonPractice);
        if (recipe.Oils.Count > 0)
        {
            yield return new TimeStep("Cure before it is tried in a warmer", "one to two weeks", CommonPractice);
        }
    }

    private static FillPlan PlanFill(Candle candle, Vessel vessel, Wax wax)
    {
        Millilitres? hot = wax.LiquidDensity is { } liquid ? liquid.VolumeOf(candle.NetMass) : null;
        Millilitres? cold = wax.SolidDensity is { } solid ? solid.VolumeOf(candle.NetMass) : null;
        Millilitres? room = RoomOf(candle, vessel);
        double? shrink = wax is { LiquidDensity: { } l, SolidDensity: { } s } ? 100 * (1 - (l.Value / s.Value)) : null;
        Grams? net = room is { } r && wax.SolidDensity is { } d ? new Grams(r.Value * d.Value) : null;
        string note =
            hot is null || cold is null ? "The wax's densities are not declared, so volumes are not known."
            : room is null ? "No fill line or headspace is declared, so the room is not known."
            : hot.Value.Value > vessel.Brimful.Value ? $"Poured at once it would overflow: {hot} hot, {vessel.Brimful} to the brim."
            : cold.Value.Value > room.Value.Value ? $"When set it stands above the fill line: {cold} in {room}."
            : $"Fits: {hot} when poured, {cold} when set, room for {room}.";
        if (vessel.Pieces > 1)
        {
            note += $" Each of its {vessel.Pieces} pieces takes {Rounded(new Grams(candle.NetMass.Value / vessel.Pieces))}.";
        }

        return new FillPlan(hot, cold, room, shrink, net, note) { ByGeometry = VesselVolume.ByGeometry(vessel) };
    }

    private static Millilitres? RoomOf(Candle candle, Vessel vessel) =>
        vessel.Fill is { } fill ? fill
        : vessel.IsMould ? vessel.Brimful
        : candle.Headspace is { } headspace ? vessel.Below(headspace)
        : null;
}

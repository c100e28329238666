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

    /// <summary>First pour into one vessel.</summary>
    public required Grams FirstPourEach { get; init; }

    /// <summary>Second pour into one vessel; zero when there is none.</summary>
    public required Grams TopUpEach { get; init; }

    /// <summary>Temperatures.</summary>
    public required IReadOnlyList<TemperatureStep> Temperatures { get; init; }

    /// <summary>Wicks.</summary>
    public required WickPlan Wicks { get; init; }

    /// <summary>Volumes.</summary>
    public required FillPlan Fill { get; init; }

    /// <summary>Most candles that one plan is made for.</summary>
    public const int MostCandles = 10_000;

    // Common practice, no source: wicks of a wide candle stand 3 to 4 cm apart unless the wick maker says otherwise. The upper end is
    // not used: whoever is told to add wicks is told to make a larger fire.
    private const double ClosestWickMm = 30;

    /// <summary>Plans a number of candles.</summary>
    /// <param name="a">The candle, as planned or as a batch was weighed.</param>
    /// <param name="wax">Its wax or blend.</param>
    /// <param name="count">How many, from 1.</param>
    /// <param name="wastePercent">Allowance in percent of the mass, 0 to 50.</param>
    /// <exception cref="ArgumentOutOfRangeException">Count or allowance are outside their ranges.</exception>
    public static PouringPlan Make(Assessment a, Wax wax, int count, double wastePercent)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, MostCandles);
        ArgumentOutOfRangeException.ThrowIfNegative(wastePercent);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(wastePercent, 50);
        Recipe recipe = a.Composition.Recipe;
        double net = a.Candle.NetMass.Value;
        double total = net * count * (1 + (wastePercent / 100));
        Grams Of(MassPercent share) => new(total * share.Value / 100);

        double plain = recipe.TopUp.Value;
        double waxShare = recipe.Waxes.Sum(w => w.Share.Value);
        List<Portion> first =
        [
            .. recipe.Waxes.Select(w => new Portion(w.Wax.Name, "wax", Of(new MassPercent(w.Share.Value * (waxShare - plain) / waxShare)))),
            .. recipe.Oils.Select(o => new Portion(o.Oil.Name, "fragrance oil", Of(o.Share))),
            .. recipe.Extras.Select(e => new Portion(e.Extra.Name, e.Extra.Purpose, Of(e.Share))),
        ];
        List<Portion> second =
            plain > 0
                ? [.. recipe.Waxes.Select(w => new Portion(w.Wax.Name, "wax", Of(new MassPercent(w.Share.Value * plain / waxShare))))]
                : [];
        double topUpEach = plain > 0 ? net * plain / 100 : HeldBack(a.Candle, net);
        return new PouringPlan
        {
            Count = count,
            WastePercent = wastePercent,
            Total = new Grams(total),
            FirstPour = first,
            TopUp = second,
            FirstPourEach = new Grams(net - topUpEach),
            TopUpEach = new Grams(topUpEach),
            Temperatures = [.. Steps(a.Candle, recipe)],
            Wicks = PlanWicks(a.Candle, a.Vessel),
            Fill = PlanFill(a.Candle, a.Vessel, wax),
        };
    }

    // Held back from the same melt: it dilutes nothing.
    private static double HeldBack(Candle candle, double net) =>
        candle.TopUp switch
        {
            ScentedTopUp { Amount: RelativeAmount { Percent: var percent } } => net * percent.Value / 100,
            ScentedTopUp { Amount: WeighedAmount { Weight: var weight } } => Math.Min(weight.Value, net),
            _ => 0,
        };

    private static IEnumerable<TemperatureStep> Steps(Candle candle, Recipe recipe)
    {
        WorkingTemperatures t = candle.Temperatures;
        List<Oil> known = [.. recipe.Oils.Select(o => o.Oil).Where(o => o.FlashPoint is not null)];
        List<string> unknown = [.. recipe.Oils.Select(o => o.Oil).Where(o => o.FlashPoint is null).Select(o => o.Name)];
        string flash = string.Join(", ", known.Select(o => $"{o.Name} {o.FlashPoint}"));
        string silent = unknown.Count > 0 ? $" Unknown: {string.Join(", ", unknown)}: ask the supplier." : "";
        yield return new TemperatureStep("Melt the wax", t.Melt, "Never leave melting wax; use a water bath or a thermostat.");
        if (recipe.Oils.Count > 0)
        {
            yield return new TemperatureStep(
                "Stir in the oil",
                t.AddFragrance,
                $"Stay below the lowest flash point: {(flash.Length == 0 ? "none is declared." : flash + ".")}{silent}"
            );
        }

        yield return new TemperatureStep("Pour", t.Pour, "Warm, dry vessels; wicks centred and straight.");
        if (candle.TopUp is { } topUp)
        {
            yield return new TemperatureStep(
                "Top up, when the first pour has set",
                t.TopUp,
                topUp is ScentedTopUp ? "From the same scented melt." : "Plain wax: it dilutes the fragrance."
            );
        }
    }

    private static WickPlan PlanWicks(Candle candle, Vessel vessel)
    {
        int count = candle.Wicks.Count;
        if (vessel.Inner is not { } inner)
        {
            return new WickPlan(count, null, "The vessel's inside is not declared, so the spacing is not known.");
        }

        double area = inner.Section.AreaSquareMillimetres;
        if (count == 1)
        {
            return new WickPlan(
                1,
                null,
                $"One wick in the middle of {Figures.Plain(inner.Section.Across.Value)} mm: choose its size by the wick maker's table for this wax, and test."
            );
        }

        // Each wick has its equal share of the surface; neighbours on such a grid stand the share's side apart.
        double spacing = Math.Sqrt(area / count);
        string verdict =
            spacing < ClosestWickMm
                ? "That is closer: flames that stand close run into one fire. Use fewer wicks."
                : "More wicks make a larger fire: how many there may be is the wick maker's to say, and a burn test's to confirm.";
        return new WickPlan(
            count,
            new Millimetres(spacing),
            $"Spread evenly they stand about {spacing / 10:0.0} cm apart. Common practice (no source) keeps at least {ClosestWickMm / 10:0} cm between wicks, unless the wick maker says otherwise. {verdict}"
        );
    }

    private static FillPlan PlanFill(Candle candle, Vessel vessel, Wax wax)
    {
        Millilitres? hot = wax.LiquidDensity is { } liquid ? liquid.VolumeOf(candle.NetMass) : null;
        Millilitres? cold = wax.SolidDensity is { } solid ? solid.VolumeOf(candle.NetMass) : null;
        Millilitres? room =
            vessel.Fill is { } fill ? fill
            : candle.Headspace is { } headspace ? vessel.Below(headspace)
            : null;
        double? shrink = wax is { LiquidDensity: { } l, SolidDensity: { } s } ? 100 * (1 - (l.Value / s.Value)) : null;
        Grams? net = room is { } r && wax.SolidDensity is { } d ? new Grams(r.Value * d.Value) : null;
        string note =
            hot is null || cold is null ? "The wax's densities are not declared, so volumes are not known."
            : room is null ? "No fill line or headspace is declared, so the room is not known."
            : hot.Value.Value > vessel.Brimful.Value ? $"Poured at once it would overflow: {hot} hot, {vessel.Brimful} to the brim."
            : cold.Value.Value > room.Value.Value ? $"When set it stands above the fill line: {cold} in {room}."
            : $"Fits: {hot} when poured, {cold} when set, room for {room}.";
        return new FillPlan(hot, cold, room, shrink, net, note);
    }
}

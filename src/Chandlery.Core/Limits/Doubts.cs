using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Limits;

/// <summary>
/// Finds what could well be a slip of the pen: a fraction for a percentage, Fahrenheit for Celsius, a thousands mark for a point. All
/// bounds here are common practice without a source: they decide what is asked, never what is lawful.
/// </summary>
public static class Doubts
{
    private const double SmallLoadPercent = 1;
    private const double LeastFilled = 0.4;
    private const double MostFilled = 1.1;
    private const double UsualDensity = 0.9;
    private const double WarmestWorkCelsius = 105;
    private const double WarmestMeltingCelsius = 90;
    private const double WarmestFlashCelsius = 130;
    private const double LeastOfGeometry = 0.5;
    private const double MostOfGeometry = 1.5;
    private const int FewestDigits = 7;

    // ITU-T E.164, 6.2: an international number has at most 15 digits.
    private const int MostDigits = 15;

    /// <summary>What is asked back of a candle and all that it is made of, and not confirmed.</summary>
    public static IReadOnlyList<Doubt> Of(Candle candle, Batch? batch, Vessel vessel, Wax wax, Recipe recipe, Maker maker) =>
        [
            .. Open(batch is null ? candle.Writing : Both(candle.Writing, batch.Writing), OfCandle(candle, vessel, wax, recipe)),
            .. batch is null ? [] : Open(batch.Writing, []),
            .. Open(vessel.Writing, OfVessel(vessel)),
            .. recipe.Waxes.Select(w => w.Wax).Append(wax).Distinct().SelectMany(w => Open(w.Writing, OfWax(w))),
            .. recipe.Oils.SelectMany(o => Open(o.Oil.Writing, OfOil(o.Oil))),
            .. Open(maker.Writing, OfMaker(maker)),
        ];

    private static IEnumerable<Doubt> Open(Writing writing, IEnumerable<Doubt> found) =>
        writing.Marks.Concat(found).Where(d => !writing.Confirmed.Contains(d.Field));

    // What a batch confirms of its candle's load counts for it.
    private static Writing Both(Writing candle, Writing batch) => candle with { Confirmed = [.. candle.Confirmed, .. batch.Confirmed] };

    private static IEnumerable<Doubt> OfCandle(Candle candle, Vessel vessel, Wax wax, Recipe recipe)
    {
        bool isLiquid = candle.NetVolume is not null;
        double load = recipe.MeltLoadOfWax.Value;
        if (recipe.Oils.Count > 0 && load < SmallLoadPercent)
        {
            string percent = Figures.Plain(load);
            string asFraction = Figures.Plain(100 * load);
            yield return new Doubt(
                "load",
                isLiquid
                    ? $"The load is {percent} % of the base, which is hardly to be smelt; as a fraction it would be {asFraction} %."
                    : $"The load is {percent} % of the wax, which is hardly to be smelt; as a fraction it would be {asFraction} %.",
                candle.Place
            );
        }

        if (OfQuantity(candle, vessel, wax) is { } quantity)
        {
            yield return quantity;
        }

        WorkingTemperatures t = candle.Temperatures;
        Celsius?[] all = [t.Melt, t.AddFragrance, t.Pour, t.TopUp];
        foreach (Celsius hot in all.OfType<Celsius>().Where(c => c.Value >= WarmestWorkCelsius).Distinct())
        {
            yield return new Doubt(
                "temperatures",
                isLiquid
                    ? $"A working temperature of {hot} is unusual for a liquid that is only mixed; {InFahrenheit(hot)}."
                    : $"A working temperature of {hot} is unusual for wax; {InFahrenheit(hot)}.",
                candle.Place
            );
        }
    }

    // What was declared is asked back in its own measure.
    private static Doubt? OfQuantity(Candle candle, Vessel vessel, Wax wax)
    {
        Millilitres room = vessel.Fill ?? vessel.Brimful;
        Millilitres filled = candle.NetVolume ?? (wax.SolidDensity ?? new GramsPerMillilitre(UsualDensity)).VolumeOf(candle.NetMass);
        return filled.Value >= LeastFilled * room.Value && filled.Value <= MostFilled * vessel.Brimful.Value ? null
            : candle.NetVolume is { } volume
                ? new Doubt("netMillilitres", $"{volume} are declared, and {vessel.Name} holds {room}.", candle.Place)
            : new Doubt("netGrams", $"{candle.NetMass} are about {filled}, and {vessel.Name} holds {room}.", candle.Place);
    }

    private static IEnumerable<Doubt> OfVessel(Vessel vessel)
    {
        if (vessel is { Inner: { } inner, AreaInside: { } area })
        {
            double volume = area * inner.Height.Value / 1000;
            if (vessel.Brimful.Value < LeastOfGeometry * volume || vessel.Brimful.Value > MostOfGeometry * volume)
            {
                yield return new Doubt(
                    "brimfulMl",
                    $"{vessel.Brimful} to the brim, and about {new Millilitres(Math.Round(volume))} by the size of the inside: measure it with water.",
                    vessel.Place
                );
            }
        }
    }

    private static IEnumerable<Doubt> OfWax(Wax wax)
    {
        if (wax.MeltingPoint is { } melting && melting.Value > WarmestMeltingCelsius)
        {
            yield return new Doubt(
                "meltingCelsius",
                $"A melting point of {melting} is unusual for wax; {InFahrenheit(melting)}.",
                wax.Place
            );
        }

        foreach (Doubt doubt in OfHighestLoad(wax.HighestLoad, wax.Place))
        {
            yield return doubt;
        }
    }

    private static IEnumerable<Doubt> OfOil(Oil oil)
    {
        if (oil.FlashPoint is { } flash && flash.Temperature.Value > WarmestFlashCelsius)
        {
            yield return new Doubt(
                "flashPoint",
                $"A flash point of {flash.Temperature} is unusual for a fragrance oil; {InFahrenheit(flash.Temperature)}.",
                oil.Place
            );
        }

        foreach (Ingredient i in oil.Ingredients.Where(i => IsBareFraction(i.Share)))
        {
            yield return new Doubt(
                "share",
                $"The share of {i.Identity.Name} is written as {i.Share.Printed}, without a sign: as a percentage that is a trace, as a fraction {Figures.Plain(100 * i.Share.High.Value)} %. Write it with its %.",
                i.Place
            );
        }

        foreach (Doubt doubt in OfHighestLoad(oil.HighestLoad, oil.Place))
        {
            yield return doubt;
        }
    }

    private static bool IsBareFraction(DeclaredRange share) =>
        share.High.Value < 1 && share.Printed.All(c => char.IsAsciiDigit(c) || c is '.' or ' ');

    private static IEnumerable<Doubt> OfHighestLoad(FragranceLoad? load, TextPlace place)
    {
        if (load is { Percent.Value: > 0 and < SmallLoadPercent } small)
        {
            yield return new Doubt(
                "highestLoad",
                $"A highest load of {small.Percent} is hardly to be smelt; as a fraction it would be {Figures.Plain(100 * small.Percent.Value)} %.",
                place
            );
        }
    }

    private static IEnumerable<Doubt> OfMaker(Maker maker)
    {
        int digits = maker.Telephone.Count(char.IsAsciiDigit);
        if (digits is < FewestDigits or > MostDigits)
        {
            yield return new Doubt(
                "telephone",
                $"The telephone number '{maker.Telephone}' has {digits} digits: nobody can call a part of a number.",
                maker.Place
            );
        }
    }

    private static string InFahrenheit(Celsius figure) =>
        $"{Figures.Plain(figure.Value)} °F would be {new Celsius(Math.Round((figure.Value - 32) * 5 / 9))}";
}

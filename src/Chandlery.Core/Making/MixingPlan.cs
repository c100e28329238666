using Chandlery.Core.Assessed;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Making;

/// <summary>Everything to weigh and mind for a number of bottles of a scented liquid.</summary>
/// <param name="Count">How many bottles.</param>
/// <param name="WastePercent">Allowance for what stays in the vessel, percent.</param>
/// <param name="Total">Mass of everything.</param>
/// <param name="Portions">What to weigh, in the order in which it goes together: base, oils, the rest.</param>
/// <param name="FlashPoints">Flash points of the finished liquid and of each oil; what is not known is said.</param>
public sealed record MixingPlan(
    int Count,
    double WastePercent,
    Grams Total,
    IReadOnlyList<Portion> Portions,
    IReadOnlyList<string> FlashPoints
)
{
    /// <summary>Plans a number of bottles.</summary>
    /// <param name="a">The product, a liquid.</param>
    /// <param name="count">How many, from 1.</param>
    /// <param name="wastePercent">Allowance in percent of the mass, 0 to 50.</param>
    /// <exception cref="ArgumentOutOfRangeException">Count or allowance are outside their ranges.</exception>
    public static MixingPlan Make(Assessment a, int count, double wastePercent)
    {
        PouringPlan.CheckCount(count);
        Recipe recipe = a.Composition.Recipe;
        double total = count * a.Candle.NetMass.Value * PouringPlan.Allowance(wastePercent);
        HashSet<string> bases = [.. recipe.Waxes.Select(w => w.Wax.Name)];
        return new MixingPlan(
            count,
            wastePercent,
            new Grams(total),
            [
                .. MeltParts
                    .Of(recipe)
                    .Select(p => new Portion(p.Name, bases.Contains(p.Name) ? "base" : p.Kind, new Grams(total * p.Fraction))),
            ],
            [Finished(a.Candle.Liquid), .. recipe.Oils.Select(o => OfOil(o.Oil))]
        );
    }

    private static string Finished(LiquidFacts? liquid) =>
        liquid?.FlashPoint is { } flash
            ? $"Finished liquid: {flash}{(flash.Method is { } method ? $" ({method})" : "")}."
            : "Finished liquid: not known. Have it measured; until then take it for highly flammable.";

    private static string OfOil(Oil oil) =>
        oil.FlashPoint is { } flash ? $"{oil.Name}: {flash}." : $"{oil.Name}: not known; ask its supplier.";
}

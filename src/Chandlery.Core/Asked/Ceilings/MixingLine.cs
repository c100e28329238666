using Chandlery.Core.Composed;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Asked.Ceilings;

/// <summary>
/// A candle whose scented melt is mixed from two ends; along the line every share in the finished candle is linear in
/// the fraction of the second end, which is what makes ceilings exactly solvable.
/// </summary>
public sealed class MixingLine
{
    private readonly Recipe recipe;
    private readonly Melt start;
    private readonly Melt end;

    private MixingLine(Recipe recipe, Melt start, Melt end, double now, double last)
    {
        this.recipe = recipe;
        this.start = start;
        this.end = end;
        Now = now;
        Last = last;
    }

    /// <summary>Where the candle is now, as a fraction from 0 to 1.</summary>
    public double Now { get; }

    /// <summary>How far the line is looked at.</summary>
    public double Last { get; }

    /// <summary>A line for a recipe.</summary>
    /// <param name="recipe">The candle as it is.</param>
    /// <param name="varied">What is varied.</param>
    /// <param name="oilId">Which oil, where one is meant.</param>
    public static MixingLine Of(Recipe recipe, Varied varied, string? oilId = null)
    {
        double finishedMelt = 100 - recipe.TopUp.Value;
        double[] oils = [.. recipe.Oils.Select(o => o.Share.Value / finishedMelt)];
        double[] extras = [.. recipe.Extras.Select(e => e.Share.Value / finishedMelt)];
        double load = oils.Sum();
        double wax = 1 - load - extras.Sum();
        int which = recipe.Oils.ToList().FindIndex(o => o.Oil.Id == oilId);
        double[] none = new double[oils.Length];
        double[] noExtras = new double[extras.Length];
        switch (varied)
        {
            case Varied.Load:
                return new MixingLine(
                    recipe,
                    new Melt(none, wax / (1 - load), Scale(extras, 1 / (1 - load))),
                    new Melt(Scale(oils, 1 / load), 0, noExtras),
                    load,
                    0.5
                );
            case Varied.OneOil:
                double own = oils[which];
                return new MixingLine(
                    recipe,
                    new Melt(Scale(With(oils, which, 0), 1 / (1 - own)), wax / (1 - own), Scale(extras, 1 / (1 - own))),
                    new Melt(With(none, which, 1), 0, noExtras),
                    own,
                    0.5
                );
            default:
                double others = load - oils[which];
                double[] without = others > 0 ? Scale(With(oils, which, 0), load / others) : With(none, which, load);
                return new MixingLine(
                    recipe,
                    new Melt(without, wax, extras),
                    new Melt(With(none, which, load), wax, extras),
                    others > 0 ? oils[which] / load : 1,
                    1
                );
        }
    }

    /// <summary>A line from a recipe to another blend of its oils, the load staying as it is.</summary>
    /// <param name="recipe">The candle as it is.</param>
    /// <param name="sharesOfBlend">Each oil's percent of the other blend, in the recipe's order; together 100.</param>
    public static MixingLine Towards(Recipe recipe, IReadOnlyList<double> sharesOfBlend)
    {
        double finishedMelt = 100 - recipe.TopUp.Value;
        double[] oils = [.. recipe.Oils.Select(o => o.Share.Value / finishedMelt)];
        double[] extras = [.. recipe.Extras.Select(e => e.Share.Value / finishedMelt)];
        double load = oils.Sum();
        double wax = 1 - load - extras.Sum();
        double[] others = [.. sharesOfBlend.Select(s => load * s / 100)];
        return new MixingLine(recipe, new Melt(oils, wax, extras), new Melt(others, wax, extras), 0, 1);
    }

    /// <summary>The recipe at a fraction.</summary>
    public Recipe At(double x)
    {
        Melt melt = Melt.Mix(start, end, x);
        double topUp = recipe.TopUp.Value;
        double finishedMelt = 100 - topUp;
        double load = melt.Oils.Sum();
        double waxTotal = recipe.Waxes.Sum(w => w.Share.Value);
        return new Recipe(
            [
                .. recipe.Oils.Select(
                    (o, i) =>
                        new OilShare(
                            o.Oil,
                            new MassPercent(melt.Oils[i] * finishedMelt),
                            new MassPercent(load > 0 ? 100 * melt.Oils[i] / load : o.ShareOfBlend.Value)
                        )
                ),
            ],
            [
                .. recipe.Waxes.Select(w => new WaxShare(
                    w.Wax,
                    new MassPercent(w.Share.Value / waxTotal * ((melt.Wax * finishedMelt) + topUp))
                )),
            ],
            [.. recipe.Extras.Select((e, i) => new ExtraShare(e.Extra, new MassPercent(melt.Extras[i] * finishedMelt), e.OfWax))],
            new MassPercent(melt.Wax > 0 ? 100 * load / melt.Wax : double.PositiveInfinity),
            new MassPercent(100 * load),
            new MassPercent(load * finishedMelt),
            recipe.TopUp
        );
    }

    private static double[] Scale(double[] values, double factor) => [.. values.Select(v => v * factor)];

    private static double[] With(double[] values, int at, double value) => [.. values.Select((v, i) => i == at ? value : v)];
}

using Chandlery.Core.Composed;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Making;

/// <summary>What a scented melt is made of, without the plain wax of a second pour.</summary>
public static class MeltParts
{
    // A thousandth of a percent of the melt: below what anyone weighs.
    private const double Same = 1e-5;

    /// <summary>The parts: waxes, oils, extras.</summary>
    internal static IReadOnlyList<MeltPart> Of(Recipe recipe)
    {
        double waxes = recipe.Waxes.Sum(w => w.Share.Value);
        double melt = 100 - recipe.TopUp.Value;
        double kept = (waxes - recipe.TopUp.Value) / waxes;
        return
        [
            .. recipe.Waxes.Select(w => new MeltPart($"wax {w.Wax.Id}", w.Wax.Name, "wax", w.Share.Value * kept / melt)),
            .. recipe.Oils.Select(o => new MeltPart($"oil {o.Oil.Id}", o.Oil.Name, "fragrance oil", o.Share.Value / melt)),
            .. recipe.Extras.Select(e => new MeltPart($"extra {e.Extra.Id}", e.Extra.Name, e.Extra.Purpose, e.Share.Value / melt)),
        ];
    }

    /// <summary>Why two candles cannot be poured from one melt; null when they can.</summary>
    public static string? WhyNotOne(Recipe one, Recipe other)
    {
        Dictionary<string, MeltPart> mine = Of(one).ToDictionary(p => p.Key);
        Dictionary<string, MeltPart> theirs = Of(other).ToDictionary(p => p.Key);
        foreach (string key in mine.Keys.Union(theirs.Keys))
        {
            double here = mine.GetValueOrDefault(key)?.Fraction ?? 0;
            double there = theirs.GetValueOrDefault(key)?.Fraction ?? 0;
            if (Math.Abs(here - there) > Same)
            {
                string name = (mine.GetValueOrDefault(key) ?? theirs[key]).Name;
                return $"{name} is {Figures.Plain(100 * here)} % of one melt and {Figures.Plain(100 * there)} % of the other.";
            }
        }

        return null;
    }
}

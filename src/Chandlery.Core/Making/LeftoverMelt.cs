using Chandlery.Core.Composed;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Making;

/// <summary>Melt that was left over from an earlier pour: what is in it counts.</summary>
/// <param name="Name">Of which candle.</param>
/// <param name="Recipe">What was in that melt.</param>
/// <param name="Mass">How much is left.</param>
public sealed record LeftoverMelt(string Name, Recipe Recipe, Grams Mass)
{
    /// <summary>True when there is oil in it.</summary>
    public bool IsScented => Recipe.Oils.Count > 0;

    /// <summary>Why it cannot go into a melt; null when it can.</summary>
    /// <param name="recipe">The new candle.</param>
    /// <param name="melt">How much of its melt is made.</param>
    public string? WhyNot(Recipe recipe, Grams melt)
    {
        Dictionary<string, MeltPart> wanted = MeltParts.Of(recipe).ToDictionary(p => p.Key);
        double most = double.PositiveInfinity;
        string scarce = "";
        foreach (MeltPart part in MeltParts.Of(this.Recipe))
        {
            if (!wanted.TryGetValue(part.Key, out MeltPart? own))
            {
                return $"It would bring {part.Name}, which this candle does not declare: what is in the candle, and its label, would be another.";
            }

            double enough = melt.Value * own.Fraction / part.Fraction;
            if (enough < most)
            {
                (most, scarce) = (enough, part.Name);
            }
        }

        return Mass.Value > most
            ? $"With {Mass} of it there would be more {scarce} than the candle declares: at most {new Grams(Math.Floor(most))} can go in."
            : null;
    }

    /// <summary>What it brings of a part.</summary>
    internal double GramsOf(string key) => Mass.Value * (MeltParts.Of(this.Recipe).FirstOrDefault(p => p.Key == key)?.Fraction ?? 0);
}

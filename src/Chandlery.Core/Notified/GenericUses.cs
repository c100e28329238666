using Chandlery.Core.Classified;
using Chandlery.Core.Composed;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Notified;

/// <summary>Finds the ingredients for which a generic identifier could stand in a notification to the poison centres.</summary>
public static class GenericUses
{
    /// <summary>One for each identifier that could stand for something. An ingredient of unknown hazard is never among it.</summary>
    /// <param name="rules">What the law allows.</param>
    /// <param name="recipe">Which of the candle's parts are oils, and which dyes.</param>
    /// <param name="substances">What is in the candle.</param>
    public static IEnumerable<GenericUse> Of(PoisonCentreRules rules, Recipe recipe, IReadOnlyList<Substance> substances)
    {
        foreach (GenericIdentifier identifier in rules.GenericIdentifiers)
        {
            HashSet<string> sources = Sources(identifier.Of, recipe);
            List<Substance> components =
            [
                .. substances.Where(s =>
                    s.IsKnown
                    && !s.Hazards.Concat(s.FromLimits).Any(h => identifier.NotWhereClassedFor.Contains(h.Category.Area))
                    && s.Ingredient.Parts.Count > 0
                    && s.Ingredient.Parts.All(p => sources.Contains(p.Product))
                ),
            ];
            if (components.Count > 0)
            {
                yield return new GenericUse(
                    identifier,
                    [.. components.Select(s => s.Name)],
                    new MassPercent(components.Sum(s => s.Ingredient.High.Value))
                );
            }
        }
    }

    // A product that bears the name of another kind's is not one of which "exclusively" can be said.
    private static HashSet<string> Sources(GenericSource of, Recipe recipe)
    {
        IEnumerable<(GenericSource? Kind, string Name)> products =
        [
            .. recipe.Oils.Select(o => ((GenericSource?)GenericSource.Oils, o.Oil.Name)),
            .. recipe.Extras.Select(e => (e.Extra.IsDye ? GenericSource.Dyes : (GenericSource?)null, e.Extra.Name)),
            .. recipe.Waxes.Select(w => ((GenericSource?)null, w.Wax.Name)),
        ];
        return [.. products.GroupBy(p => p.Name).Where(g => g.All(p => p.Kind == of)).Select(g => g.Key)];
    }
}

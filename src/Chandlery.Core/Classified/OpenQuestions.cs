using Chandlery.Core.Classified.Methods;
using Chandlery.Core.Composed;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Classified;

/// <summary>What the rules leave open: data that is missing, hazards that are not computed, judgements for a person.</summary>
internal static class OpenQuestions
{
    /// <summary>What could not be assessed.</summary>
    public static IEnumerable<string> Unassessed(
        IReadOnlyList<NotComputed> notComputed,
        IReadOnlyList<Substance> substances,
        MassPercent undeclared
    )
    {
        foreach (Substance substance in substances.Where(s => !s.IsKnown))
        {
            yield return $"{substance.Ingredient.Identity.Name} (up to {FigureFormat.English.AtMost(substance.Ingredient.High)}): its sheet says nothing about hazard classes.";
        }

        if (Composition.IsMoreThanRounding(undeclared))
        {
            yield return $"Up to {FigureFormat.English.AtMost(undeclared)} of the candle is not declared by anybody; what is in it was not assessed.";
        }

        foreach (Substance substance in substances)
        {
            foreach (IGrouping<double, SubstanceHazard> group in substance.Hazards.Where(h => !h.MIsKnown).GroupBy(h => h.M))
            {
                string classes = string.Join(" and ", group.Select(h => h.Category.Code));
                string used =
                    group.Key == 1 ? "1 was used, the least there is" : $"{Figures.Plain(group.Key)} was used, its other M-factor";
                yield return $"{substance.Name} is {classes}, but nobody gives its M-factor: {used}.";
            }
        }

        foreach (NotComputed rule in notComputed)
        {
            List<string> who = [.. substances.Where(s => s.Hazards.Any(h => rule.Hazards.Contains(h.Category))).Select(s => s.Name)];
            if (who.Count > 0)
            {
                IEnumerable<string> classes = substances
                    .SelectMany(s => s.Hazards)
                    .Where(h => rule.Hazards.Contains(h.Category))
                    .Select(h => h.Category.Code)
                    .Distinct();
                yield return $"{string.Join(", ", classes)} (from {string.Join(", ", who.Take(4))}{(who.Count > 4 ? ", ..." : "")}): {rule.Why} ({rule.Clause})";
            }
        }
    }

    /// <summary>
    /// Where adding may fail: which substances are concerned, and what the other method would give. Nothing is switched;
    /// a competent person decides.
    /// </summary>
    public static IEnumerable<(string What, Citation Clause)> NonAdditive(
        IReadOnlyList<ClassRule> rules,
        int highestCategory,
        IReadOnlyList<Substance> substances,
        IReadOnlyList<ClassResult> classes
    )
    {
        foreach (LimitRule rule in rules.OfType<LimitRule>())
        {
            if (rule.WhereAddingMayFail is not { } other)
            {
                continue;
            }

            List<Substance> concerned = [.. substances.Where(s => s.NonAdditiveKind is not null && CouldMatter(other, s, highestCategory))];
            if (concerned.Count == 0)
            {
                continue;
            }

            var index = new MixtureIndex(concerned, highestCategory);
            Rung? reached = LimitMethod.Reached(other.Rungs, adds: false, index);
            string computed = classes.FirstOrDefault(c => c.Rule == rule)?.Category.Code ?? "no class";
            string instead = reached is null ? "no class from them" : reached.Result.Code;
            string who = string.Join(
                ", ",
                concerned.Select(s => $"{s.Name} ({s.NonAdditiveKind}, up to {FigureFormat.English.AtMost(s.Ingredient.High)})")
            );
            bool matters =
                reached is not null
                && (computed == "no class" || reached.Result.Severity < classes.First(c => c.Rule == rule).Category.Severity);
            yield return (
                $"{rule.Group}: adding may fail for {who}. Adding gives {computed}; the other method would give {instead}. {(matters ? "A competent person must decide." : "The result would be no worse.")}",
                other.Clause
            );
        }
    }

    // An ingredient at less than a tenth of its limit in the other method is not worth a reader's time.
    private static bool CouldMatter(NonAdditive method, Substance substance, int highestCategory)
    {
        var alone = new MixtureIndex([substance], highestCategory);
        return method.Rungs.Any(r => LimitMethod.Filling(r, adds: false, alone) >= 0.1);
    }
}

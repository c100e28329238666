using Chandlery.Core.Law.Methods;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>Applies the rules of an edition to the substances of a candle.</summary>
public static class Classifier
{
    /// <summary>The classification of a candle on a day.</summary>
    /// <param name="edition">The law.</param>
    /// <param name="day">The day that decides which rules hold.</param>
    /// <param name="substances">What is in the candle.</param>
    /// <param name="undeclared">Greatest share that nobody has declared.</param>
    public static Classification Classify(Edition edition, DateOnly day, IReadOnlyList<Substance> substances, MassPercent undeclared)
    {
        var classes = new List<ClassResult>();
        var sensitisers = new List<Sensitiser>();
        MassPercent unknown = undeclared + new MassPercent(substances.Where(s => !s.IsKnown).Sum(s => s.Ingredient.High.Value));
        foreach (ClassRule rule in edition.Rules.Where(r => r.InForce.On(day)))
        {
            ClassResult? result = rule switch
            {
                AcuteToxicityRule acute => AcuteToxicityMethod.Evaluate(acute, substances, unknown),
                LimitRule limit => Evaluate(limit, substances, classes),
                _ => throw new InvalidOperationException($"no method for {rule.GetType().Name}"),
            };
            if (result is not null)
            {
                classes.Add(result);
            }

            if (rule is LimitRule { Elicitation: not null } sensitising)
            {
                sensitisers.AddRange(ElicitationMethod.Named(sensitising, substances));
            }
        }

        return new Classification(
            classes,
            sensitisers,
            Supplemental(edition, classes, sensitisers),
            [.. Unassessed(edition, substances, undeclared)]
        );
    }

    private static ClassResult? Evaluate(LimitRule rule, IReadOnlyList<Substance> substances, List<ClassResult> before)
    {
        ClassResult? own = LimitMethod.Reached(rule, substances) is { } rung ? LimitMethod.Explain(rule, rung, substances) : null;
        if (rule.ImpliedBy is not { } implied || own?.Category.Index == implied.Gives.Index)
        {
            return own;
        }

        ClassResult? cause = before.FirstOrDefault(c => implied.Results.Contains(c.Category));
        return cause is null
            ? own
            : cause with
            {
                Category = implied.Gives,
                Statement = implied.Gives.Statement,
                Rule = rule,
                Working = cause.Working with
                {
                    Clause = implied.Clause,
                    Sentence = $"{cause.Working.Sentence} That includes {implied.Gives.Code}.",
                },
            };
    }

    // EUH208 is for candles that are not classified as sensitising; on the others the label names the substances anyway.
    private static string? Supplemental(Edition edition, List<ClassResult> classes, List<Sensitiser> sensitisers)
    {
        foreach (LimitRule rule in edition.Rules.OfType<LimitRule>())
        {
            if (
                rule.Elicitation is { } elicitation
                && sensitisers.Any(s => s.Hazard.Category.Group == rule.Group)
                && !classes.Any(c => c.Rule is LimitRule { Elicitation: not null })
            )
            {
                return elicitation.Statement;
            }
        }

        return null;
    }

    private static IEnumerable<string> Unassessed(Edition edition, IReadOnlyList<Substance> substances, MassPercent undeclared)
    {
        foreach (Substance substance in substances.Where(s => !s.IsKnown))
        {
            yield return $"{substance.Ingredient.Identity.Name} (up to {substance.Ingredient.High}): its sheet says nothing about hazard classes.";
        }

        if (undeclared.Value > 0.005)
        {
            yield return $"Up to {undeclared} of the candle is not declared by anybody; what is in it was not assessed.";
        }

        foreach (Substance substance in substances)
        {
            foreach (SubstanceHazard hazard in substance.Hazards.Where(h => !h.MIsKnown))
            {
                yield return $"{substance.Name} is {hazard.Category.Code}, but nobody gives its M-factor: 1 was used, the least there is.";
            }
        }

        foreach (NotComputed rule in edition.NotComputed)
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
}

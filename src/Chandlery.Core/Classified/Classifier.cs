using Chandlery.Core.Classified.Methods;
using Chandlery.Core.Composed;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Classified;

/// <summary>Applies rules that are in force to the substances of a candle.</summary>
internal static class Classifier
{
    /// <summary>The classification of a mixture.</summary>
    /// <param name="rules">The rules that hold.</param>
    /// <param name="index">What is in the mixture.</param>
    /// <param name="composition">The mixture: how much of it nobody has declared, and what was measured of a liquid.</param>
    public static Classification Classify(IReadOnlyList<ClassRule> rules, MixtureIndex index, Composition composition)
    {
        MassPercent undeclared = composition.UnknownHigh;
        var classes = new List<ClassResult>();
        var sensitisers = new List<Sensitiser>();
        IReadOnlyList<Substance> substances = index.Substances;
        MassPercent unlisted = UnknownShare(substances);
        MassPercent unknown = undeclared + unlisted;
        MassPercent greatest = GreatestUnknown(substances);
        UnknownToxicity? toxicity = null;
        UnknownAquatic? aquatic = null;
        for (int i = 0; i < rules.Count; i++)
        {
            ClassResult? result;
            if (rules[i] is AcuteToxicityRule acute)
            {
                result = AcuteToxicityMethod.Evaluate(acute, substances, unknown);
                toxicity ??= greatest.Reaches(acute.Unknown.SaidFrom) ? acute.Unknown : null;
            }
            else if (rules[i] is FlashRule flash)
            {
                result = FlashMethod.Evaluate(flash, composition.Liquid);
            }
            else
            {
                var limit = (LimitRule)rules[i];
                result = IsTooThick(limit, composition) ? null : Evaluate(limit, index, classes);
                aquatic ??= limit.Unknown is { } said && greatest.Reaches(said.SaidFrom) ? said : null;
                if (limit.Elicitation is not null)
                {
                    ElicitationMethod.AddNamed(limit, index, sensitisers);
                }
            }

            if (result is not null)
            {
                classes.Add(result);
            }
        }

        return new Classification(
            classes,
            sensitisers,
            Supplemental(rules, classes, sensitisers),
            toxicity is null ? null : new UnknownStatement(unlisted, toxicity.Clause),
            aquatic is null ? null : new UnknownStatement(unlisted, aquatic.Clause)
        );
    }

    /// <summary>
    /// Whether a liquid is thicker than a rule asks. A viscosity that nobody has measured may be as low as that: the stricter reading.
    /// </summary>
    public static bool IsTooThick(LimitRule rule, Composition composition) =>
        rule.HighestViscosity is { } highest && composition.Liquid?.Viscosity is { } viscosity && viscosity.Value > highest.Value;

    // One ingredient must reach the share; many traces together do not.
    private static MassPercent GreatestUnknown(IReadOnlyList<Substance> substances) =>
        new(substances.Where(s => !s.IsKnown).Select(s => s.Ingredient.High.Value).DefaultIfEmpty(0).Max());

    /// <summary>The share of substances that are listed without a word on their hazards.</summary>
    public static MassPercent UnknownShare(IReadOnlyList<Substance> substances)
    {
        double share = 0;
        for (int i = 0; i < substances.Count; i++)
        {
            share += substances[i].IsKnown ? 0 : substances[i].Ingredient.High.Value;
        }

        return new MassPercent(share);
    }

    private static ClassResult? Evaluate(LimitRule rule, MixtureIndex index, List<ClassResult> before)
    {
        ClassResult? own = LimitMethod.Reached(rule.Rungs, rule.AddsSubstances, index) is { } rung
            ? new ClassResult(rung.Result, rule, () => LimitMethod.Explain(rule, rung, index))
            : null;
        if (rule.ImpliedBy is not { } implied || own?.Category.Index == implied.Gives.Index)
        {
            return own;
        }

        ClassResult? cause = before.Find(c => implied.Results.Contains(c.Category));
        return cause is null ? own : new ClassResult(implied.Gives, rule, () => Implied(implied, cause));
    }

    private static Explanation Implied(Implication implied, ClassResult cause) =>
        new(
            implied.Gives.Statement,
            cause.Working with
            {
                Clause = implied.Clause,
                Sentence = $"{cause.Working.Sentence} That includes {implied.Gives.Code}.",
            },
            cause.Causes
        );

    // EUH208 is for candles that are not classified as sensitising; on the others the label names the substances anyway.
    private static StatementCode? Supplemental(IReadOnlyList<ClassRule> rules, List<ClassResult> classes, List<Sensitiser> sensitisers)
    {
        if (sensitisers.Count == 0 || classes.Any(c => c.Rule is LimitRule { Elicitation: not null }))
        {
            return null;
        }

        string group = sensitisers[0].Hazard.Category.Group;
        return rules.OfType<LimitRule>().First(r => r.Group == group).Elicitation!.Statement;
    }
}

using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Classified.Methods;

/// <summary>
/// Acute toxicity estimate of a mixture (CLP Annex I, 3.1.3.6): 100 / ATEmix is the sum of share / ATE; where more than
/// a tenth is of unknown toxicity, (100 - unknown) / ATEmix is. A category is reached where ATEmix is at or below its bound,
/// that is, where the sum of share x bound / ATE reaches the whole: written so, each form (vapour, dust, gas) is measured
/// against its own bound, and ingredients known in different forms still add up.
/// </summary>
public static class AcuteToxicityMethod
{
    /// <summary>The result, or null when no category is reached.</summary>
    public static ClassResult? Evaluate(AcuteToxicityRule rule, IReadOnlyList<Substance> substances, MassPercent unknown)
    {
        List<Dose> doses = Doses(rule, substances);
        if (doses.Count == 0)
        {
            return null;
        }

        double whole = Whole(rule, unknown);
        foreach (ToxicityBound bound in rule.Bounds)
        {
            if (MassPercent.Reaches(Filling(bound, doses), whole))
            {
                return new ClassResult(bound.Result, rule, () => Explain(rule, bound, doses, whole));
            }
        }

        return null;
    }

    /// <summary>What of the mixture the sum is measured against, percent: all of it, or what is left without the unknown.</summary>
    public static double Whole(AcuteToxicityRule rule, MassPercent unknown) =>
        unknown.Exceeds(rule.Unknown.TakenOutAbove) ? 100 - unknown.Value : 100;

    /// <summary>How far a category is filled, in percent of the mixture: reached where it comes to the whole.</summary>
    public static double Filling(ToxicityBound bound, IReadOnlyList<Dose> doses) => Counting(bound, doses).Sum(c => c.Percent);

    /// <summary>All forms in which the substances are toxic by this rule's route, substance by substance.</summary>
    public static List<Dose> Doses(AcuteToxicityRule rule, IReadOnlyList<Substance> substances)
    {
        var doses = new List<Dose>();
        for (int i = 0; i < substances.Count; i++)
        {
            AddDoses(rule, substances[i], doses);
        }

        return doses;
    }

    // The only walk: whether a category is reached and why it is come from the same steps. A substance known in several forms
    // counts once, by the form that fills the category most.
    private static List<(Dose Dose, double Percent)> Counting(ToxicityBound bound, IReadOnlyList<Dose> doses)
    {
        var counting = new List<(Dose Dose, double Percent)>();
        foreach (Dose dose in doses)
        {
            MassPercent share = dose.Substance.Ingredient.High;
            if (share.Value == 0 || !share.Reaches(dose.IgnoreBelow))
            {
                continue;
            }

            double percent = share.Value * dose.FillsPerPercent(bound);
            if (counting.Count == 0 || counting[^1].Dose.Substance != dose.Substance)
            {
                counting.Add((dose, percent));
            }
            else if (percent > counting[^1].Percent)
            {
                counting[^1] = (dose, percent);
            }
        }

        return counting;
    }

    private static void AddDoses(AcuteToxicityRule rule, Substance substance, List<Dose> doses)
    {
        SubstanceHazard? hazard = null;
        for (int h = 0; h < substance.Hazards.Count; h++)
        {
            if (substance.Hazards[h].Category.Group == rule.Group)
            {
                hazard = substance.Hazards[h];
            }
        }

        if (hazard is null && substance.Toxicity.Count == 0)
        {
            return;
        }

        // A class whose figures are all milder than it counts with its point estimate, in the forms that the figures are for:
        // somebody knew more than the figures say. A class without any figure is read as the rule's first form.
        List<ToxicityEstimate> given = [.. substance.Toxicity.Where(t => rule.Forms.Contains(t.Route))];
        if (hazard is not null && BoundOf(rule, hazard.Category) is { } own && !given.Exists(g => Backs(rule, g, own)))
        {
            foreach (ExposureRoute form in given.Count == 0 ? [rule.Forms[0]] : given.Select(g => g.Route))
            {
                doses.Add(new Dose(substance, hazard.Category, form, own.PointEstimate[form], own.IgnoreBelow, hazard.Source));
            }

            return;
        }

        foreach (ToxicityEstimate estimate in given)
        {
            if (BoundOf(rule, estimate.Route, estimate.Value) is { } bound)
            {
                doses.Add(
                    new Dose(
                        substance,
                        hazard?.Category ?? bound.Result,
                        estimate.Route,
                        estimate.Value,
                        bound.IgnoreBelow,
                        hazard?.Source ?? "declared estimate"
                    )
                );
            }
        }
    }

    private static bool Backs(AcuteToxicityRule rule, ToxicityEstimate estimate, ToxicityBound own) =>
        BoundOf(rule, estimate.Route, estimate.Value) is { } bound && bound.Result.Severity <= own.Result.Severity;

    private static Explanation Explain(AcuteToxicityRule rule, ToxicityBound bound, List<Dose> doses, double whole)
    {
        List<(Dose Dose, double Percent)> counting = Counting(bound, doses);
        counting.Sort((a, b) => b.Percent.CompareTo(a.Percent));
        ExposureRoute[] forms = [.. counting.Select(c => c.Dose.Form).Distinct()];
        List<Substance> causes = [.. counting.Select(c => c.Dose.Substance)];
        return new Explanation(
            bound.Result.Statement,
            forms.Length == 1 ? InOneForm(rule, bound, counting, whole) : InSeveralForms(rule, bound, counting, whole),
            causes
        );
    }

    private static Working InOneForm(AcuteToxicityRule rule, ToxicityBound bound, List<(Dose Dose, double Percent)> counting, double whole)
    {
        ExposureRoute form = counting[0].Dose.Form;
        double upTo = bound.UpTo[form];
        string unit = rule.Units[form];
        double estimate = whole / counting.Sum(c => c.Dose.Substance.Ingredient.High.Value / c.Dose.Estimate);
        return new Working
        {
            Formula = $"ATEmix = {WholeText(whole)} / sum of (share / ATE)",
            Lines = [.. counting.Select(c => Line(c.Dose, c.Dose.Substance.Ingredient.High.Value / c.Dose.Estimate))],
            Value = estimate,
            Threshold = upTo,
            Unit = unit,
            Clause = rule.Clause,
            Sentence =
                $"The acute toxicity estimate of the candle is {Figures.Plain(estimate)} {unit}; up to {Figures.Plain(upTo)} it is {bound.Result.Code}. {counting[0].Dose.Substance.Name} adds most.",
            Confidence = rule.Confidence,
        };
    }

    private static Working InSeveralForms(
        AcuteToxicityRule rule,
        ToxicityBound bound,
        List<(Dose Dose, double Percent)> counting,
        double whole
    )
    {
        double sum = counting.Sum(c => c.Percent);
        return new Working
        {
            Formula = $"sum of (share x bound of its own form / ATE), against {WholeText(whole)} %",
            Lines = [.. counting.Select(c => Line(c.Dose, c.Percent))],
            Value = sum,
            Threshold = whole,
            Unit = "%",
            Clause = rule.Clause,
            Sentence =
                $"The ingredients' toxicity, each measured in its own form against {bound.Result.Code}, adds up to {Figures.Plain(sum)} %; from {Figures.Plain(whole)} % on the candle is {bound.Result.Code}. {counting[0].Dose.Substance.Name} adds most.",
            Confidence = rule.Confidence,
        };
    }

    private static string WholeText(double whole) => whole == 100 ? "100" : $"(100 - {Figures.Plain(100 - whole)})";

    private static WorkingLine Line(Dose dose, double adds) =>
        new WorkingLine
        {
            Substance = dose.Substance.Name,
            Cas = dose.Substance.Ingredient.Identity.Cas?.Text,
            Hazard = dose.Hazard.Code,
            Percent = dose.Substance.Ingredient.High.Value,
            Factor = 1,
            Limit = dose.Estimate,
            Adds = adds,
            Source = dose.Source,
        };

    private static ToxicityBound? BoundOf(AcuteToxicityRule rule, HazardCategory category)
    {
        for (int i = 0; i < rule.Bounds.Count; i++)
        {
            if (rule.Bounds[i].Result.Index == category.Index)
            {
                return rule.Bounds[i];
            }
        }

        return null;
    }

    private static ToxicityBound? BoundOf(AcuteToxicityRule rule, ExposureRoute form, double value)
    {
        foreach (ToxicityBound bound in rule.Bounds)
        {
            // Upper bounds are inclusive; the tolerance keeps a computed 2000 from slipping over by the last bit.
            if (value <= bound.UpTo[form] * (1 + MassPercent.RelativeTolerance))
            {
                return bound;
            }
        }

        return null;
    }
}

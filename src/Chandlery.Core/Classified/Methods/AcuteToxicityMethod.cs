using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Classified.Methods;

/// <summary>
/// Acute toxicity estimate of a mixture (CLP Annex I, 3.1.3.6): 100 / ATEmix is the sum of share / ATE; where more than
/// a tenth is of unknown toxicity, (100 - unknown) / ATEmix is.
/// </summary>
public static class AcuteToxicityMethod
{
    /// <summary>The estimate in the route's unit; infinite when nothing toxic is in it.</summary>
    public static double Estimate(AcuteToxicityRule rule, IReadOnlyList<Substance> substances, MassPercent unknown)
    {
        double sum = 0;
        foreach (Substance substance in substances)
        {
            sum += Part(rule, substance, out _, out _);
        }

        double whole = unknown > rule.Unknown.TakenOutAbove ? 100 - unknown.Value : 100;
        return sum == 0 ? double.PositiveInfinity : whole / sum;
    }

    /// <summary>The result, or null when the estimate is above the last category.</summary>
    public static ClassResult? Evaluate(AcuteToxicityRule rule, IReadOnlyList<Substance> substances, MassPercent unknown)
    {
        double estimate = Estimate(rule, substances, unknown);
        ToxicityBound? bound = BoundOf(rule, rule.Routes[0], estimate);
        return bound is null ? null : new ClassResult(bound.Result, rule, () => Explain(rule, bound, estimate, substances, unknown));
    }

    private static Explanation Explain(
        AcuteToxicityRule rule,
        ToxicityBound bound,
        double estimate,
        IReadOnlyList<Substance> substances,
        MassPercent unknown
    )
    {
        var lines = new List<WorkingLine>();
        var causes = new List<Substance>();
        foreach (Substance substance in substances)
        {
            double part = Part(rule, substance, out HazardCategory? hazard, out double ate);
            if (part > 0 && hazard is not null)
            {
                causes.Add(substance);
                lines.Add(
                    new WorkingLine(
                        substance.Name,
                        substance.Ingredient.Identity.Cas?.Text,
                        hazard.Code,
                        substance.Ingredient.High.Value,
                        1,
                        ate,
                        part,
                        substance.Hazards.FirstOrDefault(h => h.Category.Group == rule.Group)?.Source ?? "declared estimate"
                    )
                );
            }
        }

        lines.Sort((a, b) => b.Adds.CompareTo(a.Adds));
        double upTo = bound.UpTo[rule.Routes[0]];
        string formula =
            unknown > rule.Unknown.TakenOutAbove
                ? $"ATEmix = (100 - {Figures.Plain(unknown.Value)}) / sum of (share / ATE)"
                : "ATEmix = 100 / sum of (share / ATE)";
        return new Explanation(
            bound.Result.Statement,
            new Working(
                formula,
                lines,
                estimate,
                upTo,
                rule.Unit,
                rule.Clause,
                $"The acute toxicity estimate of the candle is {Figures.Plain(estimate)} {rule.Unit}; up to {Figures.Plain(upTo)} it is {bound.Result.Code}. {lines[0].Substance} adds most.",
                rule.Confidence
            ),
            causes
        );
    }

    /// <summary>The estimate by which a substance counts, in the unit of the rule's first route; 0 when it does not count.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="substance">The substance.</param>
    /// <param name="ignoreBelow">The share below which it does not count.</param>
    public static double EstimateOf(AcuteToxicityRule rule, Substance substance, out MassPercent ignoreBelow) =>
        Find(rule, substance, out _, out double ate, out ignoreBelow) ? ate : 0;

    private static double Part(AcuteToxicityRule rule, Substance substance, out HazardCategory? hazard, out double ate)
    {
        if (!Find(rule, substance, out hazard, out ate, out MassPercent ignoreBelow))
        {
            return 0;
        }

        double share = substance.Ingredient.High.Value;
        return MassPercent.Reaches(share, ignoreBelow.Value) ? share / ate : 0;
    }

    private static bool Find(
        AcuteToxicityRule rule,
        Substance substance,
        out HazardCategory? hazard,
        out double ate,
        out MassPercent ignoreBelow
    )
    {
        hazard = null;
        ate = 0;
        ignoreBelow = MassPercent.Zero;
        foreach (SubstanceHazard own in substance.Hazards)
        {
            if (own.Category.Group == rule.Group)
            {
                hazard = own.Category;
            }
        }

        (ExposureRoute Route, double Value)? estimate = null;
        foreach (ToxicityEstimate given in substance.Toxicity)
        {
            if (rule.Routes.Contains(given.Route) && (hazard is not null || BoundOf(rule, given.Route, given.Value) is not null))
            {
                estimate ??= (given.Route, given.Value);
            }
        }

        ToxicityBound? bound = estimate is { } e ? BoundOf(rule, e.Route, e.Value) : null;
        if (bound is null)
        {
            // A class without a usable estimate counts with its point estimate, even where the sheet's figure is milder.
            estimate = null;
            bound = BoundOf(rule, hazard);
        }

        if (bound is null)
        {
            return false;
        }

        hazard ??= bound.Result;
        ExposureRoute route = estimate?.Route ?? rule.Routes[0];
        double inRoute = estimate?.Value ?? bound.PointEstimate[route];
        ate = route == rule.Routes[0] ? inRoute : inRoute / bound.UpTo[route] * bound.UpTo[rule.Routes[0]];
        ignoreBelow = bound.IgnoreBelow;
        return true;
    }

    private static ToxicityBound? BoundOf(AcuteToxicityRule rule, HazardCategory? category)
    {
        for (int i = 0; category is not null && i < rule.Bounds.Count; i++)
        {
            if (rule.Bounds[i].Result.Index == category.Index)
            {
                return rule.Bounds[i];
            }
        }

        return null;
    }

    private static ToxicityBound? BoundOf(AcuteToxicityRule rule, ExposureRoute route, double value)
    {
        foreach (ToxicityBound bound in rule.Bounds)
        {
            // Upper bounds are inclusive; the tolerance keeps a computed 2000 from slipping over by the last bit.
            if (value <= bound.UpTo[route] * (1 + MassPercent.RelativeTolerance))
            {
                return bound;
            }
        }

        return null;
    }
}

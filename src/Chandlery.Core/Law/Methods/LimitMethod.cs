using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law.Methods;

/// <summary>
/// Limits: a single substance against its limit (CLP Annex I, 1.1.3 and Table 1.1), or the weighted sum of several
/// (3.2.3.3, 3.3.3.3, 4.1.3.5.5). Both measure a substance by its own specific limit where it has one.
/// </summary>
public static class LimitMethod
{
    /// <summary>How much of a rung is filled: 1 when its limit is just reached.</summary>
    /// <param name="rule">The rule, which says whether substances are added.</param>
    /// <param name="rung">The rung.</param>
    /// <param name="substances">All substances of the candle.</param>
    public static double Filling(LimitRule rule, Rung rung, IReadOnlyList<Substance> substances)
    {
        double filling = 0;
        for (int i = 0; i < substances.Count; i++)
        {
            double part = Part(rule, rung, substances[i], out _, out _);
            filling = rule.AddsSubstances ? filling + part : Math.Max(filling, part);
        }

        return filling;
    }

    /// <summary>The first rung that is reached, or null.</summary>
    public static Rung? Reached(LimitRule rule, IReadOnlyList<Substance> substances)
    {
        for (int i = 0; i < rule.Rungs.Count; i++)
        {
            if (MassPercent.Reaches(Filling(rule, rule.Rungs[i], substances), 1))
            {
                return rule.Rungs[i];
            }
        }

        return null;
    }

    /// <summary>The result of a reached rung, with its working.</summary>
    public static ClassResult Explain(LimitRule rule, Rung rung, IReadOnlyList<Substance> substances)
    {
        var lines = new List<WorkingLine>();
        var causes = new List<Substance>();
        double sum = 0;
        foreach (Substance substance in substances)
        {
            double part = Part(rule, rung, substance, out SubstanceHazard? hazard, out Term? term);
            if (part == 0 || hazard is null || term is null || (!rule.AddsSubstances && !MassPercent.Reaches(part, 1)))
            {
                continue;
            }

            double share = Share(rule, substance).Value;
            double adds = part * rung.Limit.Value;
            sum = rule.AddsSubstances ? sum + adds : Math.Max(sum, adds);
            causes.Add(substance);
            lines.Add(
                new WorkingLine(
                    substance.Name,
                    substance.Ingredient.Identity.Cas?.Text,
                    hazard.Category.Code,
                    share,
                    term.Weight * MOf(term, hazard),
                    OwnLimit(rung, term, hazard),
                    adds,
                    hazard.Source
                )
            );
        }

        lines.Sort((a, b) => b.Adds.CompareTo(a.Adds));
        string formula = rule.AddsSubstances ? SumFormula(rung) : "share of each substance alone, against its limit";
        var working = new Working(
            formula,
            lines,
            sum,
            rung.Limit.Value,
            "%",
            rule.Clause,
            Sentence(rule, rung, lines, sum),
            rule.Confidence
        );
        return new ClassResult(rung.Result, Statement(rung.Result, causes), rule, working, causes);
    }

    /// <summary>The share that counts: a natural ingredient as a whole where substances are not added, its rest where they are.</summary>
    public static MassPercent Share(LimitRule rule, Substance substance) =>
        rule.AddsSubstances ? substance.Ingredient.High : substance.Ingredient.WholeHigh;

    // What one substance fills of a rung. It counts once, in the first term that one of its hazards fits.
    private static double Part(LimitRule rule, Rung rung, Substance substance, out SubstanceHazard? hazard, out Term? term)
    {
        IReadOnlyList<Term> terms = rung.Terms;
        for (int t = 0; t < terms.Count; t++)
        {
            term = terms[t];
            for (int h = 0; h < substance.Hazards.Count; h++)
            {
                hazard = substance.Hazards[h];
                if (!Contains(term.Hazards, hazard.Category))
                {
                    continue;
                }

                double share = Share(rule, substance).Value;
                double own = OwnLimit(rung, term, hazard);
                double ignoreBelow = Math.Min(term.IgnoreBelow.Value / MOf(term, hazard), own);
                return MassPercent.Reaches(share, ignoreBelow) ? share / own : 0;
            }
        }

        hazard = null;
        term = null;
        return 0;
    }

    /// <summary>The share at which this substance alone would reach the rung.</summary>
    private static double OwnLimit(Rung rung, Term term, SubstanceHazard hazard)
    {
        double general = rung.Limit.Value / (term.Weight * MOf(term, hazard));
        for (int i = 0; i < hazard.Limits.Count; i++)
        {
            SpecificLimit limit = hazard.Limits[i];
            if (Fits(limit.Category, rung.Result))
            {
                return hazard.MilderLimitsCount ? limit.From.Value : Math.Min(limit.From.Value, general);
            }
        }

        return general;
    }

    // A limit printed for "Skin Sens. 1" holds for a substance in 1A or 1B too: sheets are not careful about the letter.
    private static bool Fits(HazardCategory limit, HazardCategory result) =>
        limit.Index == result.Index
        || (
            limit.ClassCode == result.ClassCode
            && limit.Variant == result.Variant
            && limit.Category[..Math.Min(1, limit.Category.Length)] == result.Category[..Math.Min(1, result.Category.Length)]
        );

    private static double MOf(Term term, SubstanceHazard hazard) => term.M == MWeight.None ? 1 : hazard.M;

    private static bool Contains(IReadOnlyList<HazardCategory> hazards, HazardCategory hazard)
    {
        for (int i = 0; i < hazards.Count; i++)
        {
            if (hazards[i].Index == hazard.Index)
            {
                return true;
            }
        }

        return false;
    }

    private static string SumFormula(Rung rung)
    {
        IEnumerable<string> terms = rung.Terms.Select(t =>
        {
            string weight = t.Weight == 1 ? "" : Figures.Plain(t.Weight) + " x ";
            string m = t.M == MWeight.None ? "" : "M x ";
            return $"{weight}{m}({string.Join(" + ", t.Hazards.Select(h => h.Code))})";
        });
        return string.Join(" + ", terms);
    }

    private static string Sentence(LimitRule rule, Rung rung, List<WorkingLine> lines, double sum)
    {
        if (rule.AddsSubstances)
        {
            string who = lines.Count == 1 ? lines[0].Substance : $"{lines.Count} substances, {lines[0].Substance} most of all,";
            return $"{who} together fill {Figures.Plain(sum)} % of a limit of {Figures.Plain(rung.Limit.Value)} %, so the candle is {rung.Result.Code}.";
        }

        WorkingLine worst = lines[0];
        string others = lines.Count == 1 ? "" : $" (and {lines.Count - 1} more)";
        return $"{worst.Substance}{others} makes up to {Figures.Plain(worst.Percent)} % of the finished candle; from {Figures.Plain(worst.Limit)} % on the candle is {rung.Result.Code}.";
    }

    private static string Statement(HazardCategory result, List<Substance> causes)
    {
        List<string> said =
        [
            .. causes.SelectMany(s => s.Hazards).Where(h => h.Category.Index == result.Index).Select(h => h.Statement).Distinct(),
        ];
        return said.Count == 1 ? said[0] : result.Statement;
    }
}

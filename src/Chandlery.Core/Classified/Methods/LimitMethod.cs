using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Classified.Methods;

/// <summary>
/// Limits: a single substance against its limit (CLP Annex I, 1.1.3 and Table 1.1), or the weighted sum of several
/// (3.2.3.3, 3.3.3.3, 4.1.3.5.5). Both measure a substance by its own specific limit where it has one.
/// </summary>
public static class LimitMethod
{
    /// <summary>How much of a rung is filled: 1 when its limit is just reached.</summary>
    /// <param name="rung">The rung.</param>
    /// <param name="adds">Whether the shares of several substances are added.</param>
    /// <param name="index">All substances of the candle.</param>
    public static double Filling(Rung rung, bool adds, MixtureIndex index)
    {
        double filling = 0;
        index.StartRound();
        IReadOnlyList<Term> terms = rung.Terms;
        for (int t = 0; t < terms.Count; t++)
        {
            Term term = terms[t];
            for (int h = 0; h < term.Hazards.Count; h++)
            {
                foreach ((int substance, SubstanceHazard hazard) in index.With(term.Hazards[h]))
                {
                    // A substance counts once, in the first term that one of its hazards fits.
                    if (index.First(substance))
                    {
                        double part = Part(rung, term, hazard, adds, index.Substances[substance]);
                        filling = adds ? filling + part : Math.Max(filling, part);
                    }
                }
            }
        }

        return filling;
    }

    /// <summary>The first rung that is reached, or null.</summary>
    public static Rung? Reached(IReadOnlyList<Rung> rungs, bool adds, MixtureIndex index)
    {
        for (int i = 0; i < rungs.Count; i++)
        {
            if (MassPercent.Reaches(Filling(rungs[i], adds, index), 1))
            {
                return rungs[i];
            }
        }

        return null;
    }

    /// <summary>Why a rung is reached.</summary>
    public static Explanation Explain(LimitRule rule, Rung rung, MixtureIndex index)
    {
        // The index keeps count of what it has shown, and explanations may be asked for by several threads.
        lock (index)
        {
            return ExplainAlone(rule, rung, index);
        }
    }

    private static Explanation ExplainAlone(LimitRule rule, Rung rung, MixtureIndex index)
    {
        var lines = new List<WorkingLine>();
        var causes = new List<Substance>();
        double sum = 0;
        index.StartRound();
        foreach (Term term in rung.Terms)
        {
            foreach (HazardCategory category in term.Hazards)
            {
                foreach ((int at, SubstanceHazard hazard) in index.With(category))
                {
                    Substance substance = index.Substances[at];
                    double part = index.First(at) ? Part(rung, term, hazard, rule.AddsSubstances, substance) : 0;
                    if (part == 0 || (!rule.AddsSubstances && !MassPercent.Reaches(part, 1)))
                    {
                        continue;
                    }

                    double adds = part * rung.Limit.Value;
                    sum = rule.AddsSubstances ? sum + adds : Math.Max(sum, adds);
                    causes.Add(substance);
                    lines.Add(Line(rung, term, hazard, rule.AddsSubstances, substance, adds));
                }
            }
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
        return new Explanation(Statement(rung.Result, causes), working, causes);
    }

    /// <summary>The share that counts: a natural ingredient as a whole where substances are not added, its rest where they are.</summary>
    public static MassPercent Share(bool adds, Substance substance) => adds ? substance.Ingredient.High : substance.Ingredient.WholeHigh;

    /// <summary>The share of the candle at which this substance alone would reach the rung.</summary>
    public static double OwnLimit(Rung rung, Term term, SubstanceHazard hazard)
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

    /// <summary>The share below which this substance does not count.</summary>
    public static double IgnoreBelow(Rung rung, Term term, SubstanceHazard hazard) =>
        Math.Min(term.IgnoreBelow.Value / MOf(term, hazard), OwnLimit(rung, term, hazard));

    private static double Part(Rung rung, Term term, SubstanceHazard hazard, bool adds, Substance substance)
    {
        double share = Share(adds, substance).Value;
        return MassPercent.Reaches(share, IgnoreBelow(rung, term, hazard)) ? share / OwnLimit(rung, term, hazard) : 0;
    }

    // A limit printed for "Skin Sens. 1" holds for a substance in 1A or 1B too: sheets are not careful about the letter.
    private static bool Fits(HazardCategory limit, HazardCategory result) =>
        limit.Index == result.Index
        || (
            limit.ClassCode == result.ClassCode
            && limit.Variant == result.Variant
            && limit.Category.Length > 0
            && result.Category.Length > 0
            && limit.Category[0] == result.Category[0]
        );

    private static double MOf(Term term, SubstanceHazard hazard) => term.M == MWeight.None ? 1 : hazard.M;

    private static WorkingLine Line(Rung rung, Term term, SubstanceHazard hazard, bool adds, Substance substance, double contribution) =>
        new(
            substance.Name,
            substance.Ingredient.Identity.Cas?.Text,
            hazard.Category.Code,
            Share(adds, substance).Value,
            term.Weight * MOf(term, hazard),
            OwnLimit(rung, term, hazard),
            contribution,
            hazard.Source
        );

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
        WorkingLine worst = lines[0];
        if (rule.AddsSubstances)
        {
            string who =
                lines.Count == 1
                    ? $"{worst.Substance} alone comes"
                    : $"{lines.Count} substances, {worst.Substance} most of all, together come";
            return $"{who} to {Figures.Plain(sum)} % in the law's weighted sum; from {Figures.Plain(rung.Limit.Value)} % on the candle is {rung.Result.Code}.";
        }

        string others = lines.Count == 1 ? "" : $" (and {lines.Count - 1} more)";
        return $"{worst.Substance}{others} makes up to {Figures.Plain(worst.Percent)} % of the finished candle; from {Figures.Plain(worst.Limit)} % on the candle is {rung.Result.Code}.";
    }

    private static string Statement(HazardCategory result, List<Substance> causes)
    {
        string? only = null;
        foreach (Substance cause in causes)
        {
            for (int i = 0; i < cause.Hazards.Count; i++)
            {
                SubstanceHazard hazard = cause.Hazards[i];
                if (hazard.Category.Index == result.Index)
                {
                    // Letters that say more (H361d) are kept only where all causes agree on them.
                    only = only is null || only == hazard.Statement ? hazard.Statement : result.Statement;
                }
            }
        }

        return only ?? result.Statement;
    }
}

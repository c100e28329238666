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
        if (rung.OnlyWith is { } condition && !Holds(condition, adds, index))
        {
            return 0;
        }

        var counter = new FillingCounter(adds);
        Walk(rung, adds, index, ref counter);
        return counter.Filling;
    }

    /// <summary>The first rung that is reached, or null.</summary>
    public static Rung? Reached(IReadOnlyList<Rung> rungs, bool adds, MixtureIndex index)
    {
        for (int i = 0; i < rungs.Count; i++)
        {
            if (IsReached(rungs[i], adds, index))
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
        List<Counted> counted = CountedIn(rule, rung, index);
        double limit = rung.Limit.Value;
        double sum = rule.AddsSubstances ? counted.Sum(c => c.Part * limit) : counted[0].Part * limit;
        List<WorkingLine> lines = [.. counted.Select(c => Line(c, limit))];
        string formula = rule.AddsSubstances ? SumFormula(rung) : "share of each substance alone, against its limit";
        var working = new Working
        {
            Formula = formula,
            Lines = lines,
            Value = sum,
            Threshold = limit,
            Unit = "%",
            Clause = rule.Clause,
            Sentence = Sentence(rule, rung, lines, sum),
            Confidence = rule.Confidence,
        };

        // There may be two ways to one result (STOT 2 by category 1 or by category 2): who goes the other way is a cause too.
        List<Substance> causes =
        [
            .. rule
                .Rungs.Where(r => r == rung || (r.Result.Index == rung.Result.Index && IsReached(r, rule.AddsSubstances, index)))
                .SelectMany(r => r == rung ? counted : CountedIn(rule, r, index))
                .OrderByDescending(c => c.Part)
                .Select(c => c.Substance)
                .Distinct(),
        ];
        return new Explanation(StatementOf(rung.Result, causes), working, causes);
    }

    // What counts in a rung, the most first: all that adds to a sum, or each that reaches the limit alone.
    private static List<Counted> CountedIn(LimitRule rule, Rung rung, MixtureIndex index)
    {
        var all = new List<Counted>();
        var counter = new ListingCounter(all);
        Walk(rung, rule.AddsSubstances, index, ref counter);
        return [.. all.Where(c => c.Part > 0 && (rule.AddsSubstances || MassPercent.Reaches(c.Part, 1))).OrderByDescending(c => c.Part)];
    }

    private static bool IsReached(Rung rung, bool adds, MixtureIndex index) => MassPercent.Reaches(Filling(rung, adds, index), 1);

    private static bool Holds(RungCondition condition, bool adds, MixtureIndex index)
    {
        foreach (HazardCategory category in condition.Hazards)
        {
            foreach ((int at, _) in index.With(category))
            {
                Substance substance = index.Substances[at];
                if (Share(adds, substance).Reaches(ConditionShare(condition, category, substance)))
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>The share from which a substance meets a condition: its own limits of the group may lie lower.</summary>
    public static MassPercent ConditionShare(RungCondition condition, HazardCategory category, Substance substance) =>
        substance.LimitsIn(category.Group) is { } own && own.Lowest < condition.From ? own.Lowest : condition.From;

    // The only walk: whether a rung is reached and why it is come from the same steps.
    private static void Walk<T>(Rung rung, bool adds, MixtureIndex index, ref T counter)
        where T : struct, ICounter
    {
        index.StartRound();
        IReadOnlyList<Term> terms = rung.Terms;
        for (int t = 0; t < terms.Count; t++)
        {
            Term term = terms[t];
            for (int h = 0; h < term.Hazards.Count; h++)
            {
                foreach ((int at, SubstanceHazard hazard) in index.With(term.Hazards[h]))
                {
                    // A substance counts once, in the first term that one of its hazards fits.
                    if (!index.First(at))
                    {
                        continue;
                    }

                    Substance substance = index.Substances[at];
                    double share = Share(adds, substance).Value;
                    double limit = OwnLimit(rung, term, hazard, substance);
                    if (MassPercent.Reaches(share, IgnoreBelow(term, hazard, limit)))
                    {
                        counter.Count(new Counted(substance, hazard, term, share, limit, share / limit));
                    }
                }
            }
        }
    }

    /// <summary>The share that counts: a natural ingredient as a whole where substances are not added, its rest where they are.</summary>
    public static MassPercent Share(bool adds, Substance substance) => adds ? substance.Ingredient.High : substance.Ingredient.WholeHigh;

    /// <summary>The share of the candle at which this substance alone would reach the rung, percent.</summary>
    public static double OwnLimit(Rung rung, Term term, SubstanceHazard hazard, Substance substance)
    {
        double general = rung.Limit.Value / (term.Weight * MOf(term.M, hazard));
        return substance.LimitsIn(rung.Result.Group)?.For(rung.Result, general) ?? general;
    }

    /// <summary>The share below which this substance does not count, percent.</summary>
    /// <param name="term">The term that it counts in.</param>
    /// <param name="hazard">Its hazard.</param>
    /// <param name="ownLimit">Its own limit for the rung, which may lie lower.</param>
    public static double IgnoreBelow(Term term, SubstanceHazard hazard, double ownLimit) =>
        Math.Min(term.IgnoreBelow.Value / MOf(term.IgnoreBelowDividedBy, hazard), ownLimit);

    private static double MOf(MFactorKind kind, SubstanceHazard hazard) =>
        kind != MFactorKind.None && kind == hazard.Category.MultipliedBy ? hazard.M : 1;

    private static WorkingLine Line(Counted c, double rungLimit) =>
        new WorkingLine
        {
            Substance = c.Substance.Name,
            Cas = c.Substance.Ingredient.Identity.Cas?.Text,
            Hazard = c.Hazard.Category.Code,
            Percent = c.SharePercent,
            Factor = c.Term.Weight * MOf(c.Term.M, c.Hazard),
            Limit = c.LimitPercent,
            Adds = c.Part * rungLimit,
            Source = c.Hazard.Source,
        };

    private static string SumFormula(Rung rung)
    {
        IEnumerable<string> terms = rung.Terms.Select(t =>
        {
            string weight = t.Weight == 1 ? "" : Figures.Plain(t.Weight) + " x ";
            string m = t.M == MFactorKind.None ? "" : "M x ";
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
        return $"{worst.Substance}{others} makes up to {FigureFormat.English.AtMost(new MassPercent(worst.Percent))} of the finished candle; from {Figures.Plain(worst.Limit)} % on the candle is {rung.Result.Code}.";
    }

    private static StatementCode StatementOf(HazardCategory result, List<Substance> causes) =>
        StatementLetters.Join(
            result.Statement,
            [.. causes.SelectMany(c => c.Hazards).Where(h => h.Category.Index == result.Index).Select(h => h.Statement)]
        );
}

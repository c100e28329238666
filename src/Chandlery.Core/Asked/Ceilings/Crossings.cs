using Chandlery.Core.Classified;
using Chandlery.Core.Classified.Methods;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Asked.Ceilings;

/// <summary>All fractions of a line at which some rule may begin or end to be reached: roots of piecewise linear functions.</summary>
internal static class Crossings
{
    public static IEnumerable<double> Of(
        IReadOnlyList<ClassRule> rules,
        IReadOnlyList<LinearSubstance> substances,
        Func<double, double> unknownPercent
    )
    {
        foreach (ClassRule rule in rules)
        {
            IEnumerable<double> own = rule switch
            {
                LimitRule limit => limit
                    .Rungs.SelectMany(r =>
                        (limit.AddsSubstances ? SumCrossings(r, substances) : SingleCrossings(r, substances)).Concat(
                            ConditionCrossings(r, substances)
                        )
                    )
                    .Concat(limit.Elicitation is { } elicitation ? NamingCrossings(elicitation, substances) : []),
                AcuteToxicityRule acute => AcuteCrossings(acute, substances, unknownPercent),
                _ => [],
            };
            foreach (double x in own)
            {
                yield return x;
            }
        }
    }

    private static IEnumerable<double> ConditionCrossings(Rung rung, IReadOnlyList<LinearSubstance> substances) =>
        rung.OnlyWith is not { } condition
            ? []
            : substances
                .SelectMany(s =>
                    condition
                        .Hazards.Where(c => s.Substance.Hazards.Any(h => h.Category.Index == c.Index))
                        .Select(c => LinearSubstance.Root(s.High0, s.High1, LimitMethod.ConditionShare(condition, c, s.Substance).Value))
                )
                .OfType<double>();

    private static IEnumerable<double> SingleCrossings(Rung rung, IReadOnlyList<LinearSubstance> substances) =>
        Counted(rung, substances).Select(c => LinearSubstance.Root(c.Substance.Whole0, c.Substance.Whole1, c.OwnLimit)).OfType<double>();

    private static IEnumerable<double> NamingCrossings(Elicitation elicitation, IReadOnlyList<LinearSubstance> substances) =>
        substances.SelectMany(s =>
            s.Substance.Hazards.Concat(s.Substance.FromLimits)
                .Select(h => ElicitationMethod.LimitFor(elicitation, h, s.Substance))
                .OfType<MassPercent>()
                .Select(limit => LinearSubstance.Root(s.Whole0, s.Whole1, limit.Value))
                .OfType<double>()
        );

    // Between the shares at which substances begin to count, the sum is a straight line.
    private static List<double> SumCrossings(Rung rung, IReadOnlyList<LinearSubstance> substances)
    {
        List<LinearCounted> counted = [.. Counted(rung, substances)];
        double[] breaks =
        [
            .. counted.Select(c => LinearSubstance.Root(c.Substance.High0, c.Substance.High1, c.IgnoreBelow)).OfType<double>(),
        ];
        return PieceRoots(
            breaks,
            x => counted.Where(c => MassPercent.Reaches(c.Substance.High(x), c.IgnoreBelow)),
            c => (c.Substance.High0 / c.OwnLimit, c.Substance.High1 / c.OwnLimit),
            1,
            1
        );
    }

    private static List<double> AcuteCrossings(
        AcuteToxicityRule rule,
        IReadOnlyList<LinearSubstance> substances,
        Func<double, double> unknownPercent
    )
    {
        // The sum of share x bound / ATE reaches the whole, which is 100 or 100 less the unknown.
        List<(LinearSubstance Substance, List<Dose> Doses)> toxic =
        [
            .. substances.Select(s => (Substance: s, Doses: AcuteToxicityMethod.Doses(rule, [s.Substance]))).Where(s => s.Doses.Count > 0),
        ];
        double u0 = unknownPercent(0);
        double u1 = unknownPercent(1);
        double takenOut = rule.Unknown.TakenOutAbove.Value;
        var breaks = toxic
            .SelectMany(t => t.Doses.Select(d => LinearSubstance.Root(t.Substance.High0, t.Substance.High1, d.IgnoreBelow.Value)))
            .Append(LinearSubstance.Root(u0, u1, takenOut))
            .OfType<double>()
            .ToArray();
        var roots = new List<double>(breaks);
        foreach (ToxicityBound bound in rule.Bounds)
        {
            foreach (bool reduced in new[] { false, true })
            {
                roots.AddRange(
                    PieceRoots(
                        breaks,
                        x => toxic.Select(t => (t.Substance, Fills: Fills(t.Doses, bound, t.Substance.High(x)))),
                        t => (t.Substance.High0 * t.Fills, t.Substance.High1 * t.Fills),
                        reduced ? 100 - u0 : 100,
                        reduced ? 100 - u1 : 100
                    )
                );
            }
        }

        return roots;
    }

    // What one percent of the substance fills at this share: the form that fills most among those that count.
    private static double Fills(List<Dose> doses, ToxicityBound bound, double sharePercent) =>
        doses
            .Where(d => MassPercent.Reaches(sharePercent, d.IgnoreBelow.Value))
            .Select(d => d.FillsPerPercent(bound))
            .DefaultIfEmpty(0)
            .Max();

    /// <summary>Roots of (sum of counted lines) = target line in every piece between the breaks, and the breaks themselves.</summary>
    private static List<double> PieceRoots<T>(
        double[] breaks,
        Func<double, IEnumerable<T>> countedAt,
        Func<T, (double At0, double At1)> line,
        double target0,
        double target1
    )
    {
        double[] edges = [0, .. breaks.Where(b => b is > 0 and < 1).Distinct().Order(), 1];
        var roots = new List<double>(breaks);
        for (int i = 0; i + 1 < edges.Length; i++)
        {
            double at0 = 0;
            double at1 = 0;
            foreach (T item in countedAt((edges[i] + edges[i + 1]) / 2))
            {
                (double a, double b) = line(item);
                at0 += a;
                at1 += b;
            }

            if (LinearSubstance.Root(at0 - target0, at1 - target1, 0) is { } root && root >= edges[i] && root <= edges[i + 1])
            {
                roots.Add(root);
            }
        }

        return roots;
    }

    private static IEnumerable<LinearCounted> Counted(Rung rung, IReadOnlyList<LinearSubstance> substances)
    {
        foreach (LinearSubstance linear in substances)
        {
            Substance substance = linear.Substance;
            foreach (Term term in rung.Terms)
            {
                SubstanceHazard? hazard = term
                    .Hazards.Select(category =>
                        substance.Hazards.Concat(substance.FromLimits).FirstOrDefault(h => h.Category.Index == category.Index)
                    )
                    .FirstOrDefault(h => h is not null);
                if (hazard is not null)
                {
                    double limit = LimitMethod.OwnLimit(rung, term, hazard, substance);
                    yield return new LinearCounted(linear, limit, LimitMethod.IgnoreBelow(term, hazard, limit));
                    break;
                }
            }
        }
    }
}

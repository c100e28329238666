using Chandlery.Core.Classified.Methods;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Asked.Ceilings;

/// <summary>All fractions of a line at which some rule may begin or end to be reached: roots of piecewise linear functions.</summary>
internal static class Crossings
{
    public static IEnumerable<double> Of(
        Edition edition,
        DateOnly day,
        DateOnly? onMarketSince,
        IReadOnlyList<LinearSubstance> substances,
        Func<double, double> unknownPercent
    )
    {
        foreach (ClassRule rule in edition.Rules.Where(r => r.InForce.On(day, onMarketSince)))
        {
            IEnumerable<double> own = rule switch
            {
                LimitRule limit => limit
                    .Rungs.SelectMany(r => limit.AddsSubstances ? SumCrossings(r, substances) : SingleCrossings(r, substances))
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

    private static IEnumerable<double> SingleCrossings(Rung rung, IReadOnlyList<LinearSubstance> substances) =>
        Counted(rung, substances).Select(c => LinearSubstance.Root(c.Substance.Whole0, c.Substance.Whole1, c.OwnLimit)).OfType<double>();

    private static IEnumerable<double> NamingCrossings(Elicitation elicitation, IReadOnlyList<LinearSubstance> substances) =>
        substances.SelectMany(s =>
            s.Substance.Hazards.Select(h => ElicitationMethod.LimitFor(elicitation, h))
                .OfType<MassPercent>()
                .Select(limit => LinearSubstance.Root(s.Whole0, s.Whole1, limit.Value))
                .OfType<double>()
        );

    // Between the shares at which substances begin to count, the sum is a straight line.
    private static List<double> SumCrossings(Rung rung, IReadOnlyList<LinearSubstance> substances)
    {
        List<Counted> counted = [.. Counted(rung, substances)];
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
        // sum of share / ATE reaches whole / bound, where the whole is 100 or 100 less the unknown.
        var toxic = substances
            .Select(s =>
                (
                    Substance: s,
                    Ate: AcuteToxicityMethod.EstimateOf(rule, s.Substance, out MassPercent ignoreBelow),
                    IgnoreBelow: ignoreBelow.Value
                )
            )
            .Where(s => s.Ate > 0)
            .ToList();
        double u0 = unknownPercent(0);
        double u1 = unknownPercent(1);
        double takenOut = rule.Unknown.TakenOutAbove.Value;
        var breaks = toxic
            .Select(t => LinearSubstance.Root(t.Substance.High0, t.Substance.High1, t.IgnoreBelow))
            .Append(LinearSubstance.Root(u0, u1, takenOut))
            .OfType<double>()
            .ToArray();
        var roots = new List<double>(breaks);
        foreach (ToxicityBound bound in rule.Bounds)
        {
            double upTo = bound.UpTo[rule.Routes[0]];
            foreach (bool reduced in new[] { false, true })
            {
                double whole0 = (reduced ? 100 - u0 : 100) / upTo;
                double whole1 = (reduced ? 100 - u1 : 100) / upTo;
                roots.AddRange(
                    PieceRoots(
                        breaks,
                        x => toxic.Where(t => MassPercent.Reaches(t.Substance.High(x), t.IgnoreBelow)),
                        t => (t.Substance.High0 / t.Ate, t.Substance.High1 / t.Ate),
                        whole0,
                        whole1
                    )
                );
            }
        }

        return roots;
    }

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

    private static IEnumerable<Counted> Counted(Rung rung, IReadOnlyList<LinearSubstance> substances)
    {
        foreach (LinearSubstance substance in substances)
        {
            foreach (Term term in rung.Terms)
            {
                if (substance.Substance.Hazards.FirstOrDefault(h => term.Hazards.Contains(h.Category)) is { } hazard)
                {
                    yield return new Counted(
                        substance,
                        LimitMethod.OwnLimit(rung, term, hazard),
                        LimitMethod.IgnoreBelow(rung, term, hazard)
                    );
                    break;
                }
            }
        }
    }
}

using Chandlery.Core.Asked.Ceilings;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Judged;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Asked.Trials;

/// <summary>
/// Finds the largest load of a trial's blend, and the nearest blend at its load, that keep to what is asked. Along a line of
/// mixtures every boundary is solved exactly; what is answered is rounded to the safe side and judged again.
/// </summary>
/// <param name="trial">The trial.</param>
/// <param name="question">In which wax, at which load, under one edition of the law.</param>
/// <param name="recipe">Its recipe; oils that may be mixed in beside its own stand in it with a share of zero.</param>
/// <param name="aims">What is asked.</param>
/// <param name="law">The law in force.</param>
public sealed class TrialSolver(Trial trial, TrialQuestion question, Recipe recipe, TrialAims aims, LawInForce law)
{
    // Answers are told in hundredths of a percent.
    private const double Steps = 100;

    // Every group of so many oils is tried as what is left out; of more oils only each alone.
    private const int MostForGroups = 5;

    // How many of the nearest are looked at more closely.
    private const int Finalists = 6;

    private readonly double[] own = [.. recipe.Oils.Select(o => o.ShareOfBlend.Value)];

    /// <summary>The largest load of the blend up to which everything is kept; null when no load at all will do.</summary>
    public TrialAnswer? LargestLoad()
    {
        Recipe plain = WithoutAbsent(recipe);
        MixingLine line = MixingLine.Of(plain, Varied.Load);
        double[] edges = Edges(line);
        int breaks = Enumerable.Range(0, edges.Length - 1).FirstOrDefault(i => Missed(line.At(Middle(edges, i))).Count > 0, -1);
        if (breaks == 0 || question.Wax.HighestLoad is null)
        {
            return null;
        }

        double bound = breaks < 0 ? line.Last : edges[breaks];
        IReadOnlyList<string> beyond = breaks < 0 ? [] : Missed(line.At(Middle(edges, breaks)));
        for (double steps = Math.Floor(Steps * line.At(bound).MeltLoadOfWax.Value); steps > 0; steps--)
        {
            Recipe at = line.At(steps / Steps / (100 + (steps / Steps)));
            if (Missed(at).Count == 0)
            {
                return new TrialAnswer(Judge(at), 0, beyond);
            }
        }

        return null;
    }

    /// <summary>
    /// The nearest blend at the same load: first among those on lines to the blend without some of its oils, one oil alone, and one
    /// oil given up for another; then every exchange of two oils is taken back as far as all is still kept. All blends in hundredths of a
    /// percent that could be nearer are then looked at, as far as time allows.
    /// </summary>
    /// <returns>
    /// The trial's own blend when it keeps to everything; null when none was found. Proven where no blend in hundredths of a percent is
    /// nearer, or none keeps to everything.
    /// </returns>
    public (TrialAnswer? Blend, bool IsProven) NearestBlend()
    {
        IReadOnlyList<string> missed = Missed(recipe);
        if (missed.Count == 0)
        {
            return (new TrialAnswer(Judge(recipe), 0, []), true);
        }

        double[]? nearest = Targets()
            .Select(NearestTowards)
            .OfType<double[]>()
            .OrderBy(Exchanged)
            .Take(Finalists)
            .Select(TakenBack)
            .OrderBy(Exchanged)
            .ThenBy(shares => shares.Count(s => s > 0))
            .FirstOrDefault();
        double bound = nearest is null ? double.PositiveInfinity : Steps * Exchanged(nearest);
        (IReadOnlyList<int>? nearer, bool isProven) = new BlendSearch([.. own.Select(s => Steps * s)], LeastKeeps, Keeps).NearerThan(bound);
        nearest = nearer is null ? nearest : InPercent(nearer);
        return (nearest is null ? null : new TrialAnswer(Judge(Blend(nearest)), Exchanged(nearest), missed), isProven);
    }

    private static double[] InPercent(IReadOnlyList<int> steps) => [.. steps.Select(s => s / Steps)];

    private bool Keeps(IReadOnlyList<int> steps) => Missed(Blend(InPercent(steps))).Count == 0;

    // Nothing stands for the rest: whatever does would only add to what is there.
    private bool LeastKeeps(IReadOnlyList<int> steps)
    {
        double[] percent = InPercent(steps);
        IEnumerable<OilShare> least = recipe.Oils.Select(
            (o, i) => o with { Share = new MassPercent(recipe.Load.Value * percent[i] / 100), ShareOfBlend = new MassPercent(percent[i]) }
        );
        return Missed(recipe with { Oils = [.. least] }).Count == 0;
    }

    /// <summary>What the trial does not keep to as it is.</summary>
    public IReadOnlyList<string> MissedNow() => Missed(recipe);

    private double[]? NearestTowards(double[] target)
    {
        MixingLine line = MixingLine.Towards(recipe, target);
        double[] edges = Edges(line);
        double from = Enumerable
            .Range(0, edges.Length - 1)
            .Where(i => Missed(line.At(Middle(edges, i))).Count == 0)
            .Select(i => edges[i])
            .FirstOrDefault(1);
        double step = 1 / (Steps * Exchanged(target));
        for (double x = from; x <= 1 + step; x += step)
        {
            double[] shares = Rounded(target, Math.Min(x, 1));
            if (Missed(Blend(shares)).Count == 0)
            {
                return shares;
            }
        }

        return null;
    }

    private double[] TakenBack(double[] shares)
    {
        double[] at = shares;
        foreach (int less in Enumerable.Range(0, own.Length).Where(i => shares[i] < own[i]))
        {
            foreach (int more in Enumerable.Range(0, own.Length).Where(i => shares[i] > own[i]))
            {
                at = TakenBack(at, less, more);
            }
        }

        return at;
    }

    // Gives as much as can be of one oil back to another that there is less of than in the trial.
    private double[] TakenBack(double[] at, int less, int more)
    {
        double most = Math.Min(own[less] - at[less], at[more] - own[more]);
        if (most * Steps < 1)
        {
            return at;
        }

        MixingLine line = MixingLine.Towards(Blend(at), Moved(most));
        double[] edges = Edges(line);
        int breaks = Enumerable.Range(0, edges.Length - 1).FirstOrDefault(i => Missed(line.At(Middle(edges, i))).Count > 0, -1);
        double bound = Math.Floor((Steps * most * (breaks < 0 ? 1 : edges[breaks])) + MassPercent.RelativeTolerance);
        for (double steps = bound; steps > 0; steps--)
        {
            double[] shares = Moved(steps / Steps);
            if (Missed(Blend(shares)).Count == 0)
            {
                return shares;
            }
        }

        return at;

        double[] Moved(double percent) =>
            [
                .. at.Select(
                    (s, i) =>
                        i == less ? Math.Round(s + percent, 2)
                        : i == more ? Math.Round(s - percent, 2)
                        : s
                ),
            ];
    }

    private Recipe Blend(double[] shares) => MixingLine.Towards(recipe, shares).At(1);

    // How much of the blend is another oil than in the trial, percent.
    private double Exchanged(double[] shares) => own.Zip(shares, (a, b) => Math.Abs(a - b)).Sum() / 2;

    // Each oil that becomes less is rounded down, so that what is told goes far enough; what is over goes to those that become more.
    private double[] Rounded(double[] target, double x)
    {
        double[] shares = [.. own.Select((a, i) => a + (x * (target[i] - a)))];
        double[] told =
        [
            .. shares.Select((s, i) => target[i] < own[i] ? Math.Floor((Steps * s) + MassPercent.RelativeTolerance) / Steps : s),
        ];
        int[] more = [.. Enumerable.Range(0, own.Length).Where(i => target[i] > own[i])];
        double over = 100 - told.Sum();
        foreach (int i in more.SkipLast(1))
        {
            double share = Math.Round(told[i] + (over / more.Length), 2);
            told[i] = share;
        }

        told[more[^1]] = 0;
        told[more[^1]] = Math.Round(100 - told.Sum(), 2);
        return told;
    }

    private IEnumerable<double[]> Targets()
    {
        int[] used = [.. Enumerable.Range(0, own.Length).Where(i => own[i] > 0)];
        if (used.Length <= MostForGroups)
        {
            for (int group = 1; group < (1 << used.Length) - 1; group++)
            {
                HashSet<int> gone = [.. used.Where((_, bit) => (group & (1 << bit)) != 0)];
                yield return Without(gone);
            }
        }
        else
        {
            foreach (int i in used)
            {
                yield return Without([i]);
            }
        }

        foreach (int j in Enumerable.Range(0, own.Length).Where(j => own[j] < 100))
        {
            yield return [.. own.Select((_, i) => i == j ? 100.0 : 0)];
            foreach (int i in used.Where(i => i != j))
            {
                yield return
                [
                    .. own.Select(
                        (s, k) =>
                            k == i ? 0
                            : k == j ? s + own[i]
                            : s
                    ),
                ];
            }
        }
    }

    private double[] Without(HashSet<int> gone)
    {
        double left = own.Where((_, i) => !gone.Contains(i)).Sum();
        return [.. own.Select((s, i) => gone.Contains(i) ? 0 : 100 * s / left)];
    }

    // Where anything may begin or end on a line, with its two ends.
    private double[] Edges(MixingLine line)
    {
        var finder = new CeilingFinder(law.Judge(Composer.Compose(recipe)), line, r => TrialAssessor.LimitsOf(question, r));
        List<double> inner = [.. finder.Find().Select(c => c.Fraction)];
        if (aims.Cost is { } cost)
        {
            double at0 = aims.CostPerKilogram(line.At(0));
            double slope = (aims.CostPerKilogram(line.At(line.Last)) - at0) / line.Last;
            double root = (cost.MostPerKilogram - at0) / slope;
            if (root > 0 && root < line.Last)
            {
                inner.Add(root);
            }
        }

        return [0, .. inner.Order(), line.Last];
    }

    private static double Middle(double[] edges, int i) => (edges[i] + edges[i + 1]) / 2;

    private List<string> Missed(Recipe at) => [.. aims.MissedBy(Judge(at))];

    private TrialVerdict Judge(Recipe at) => TrialAssessor.Judge(trial, question, WithoutAbsent(at), law);

    // An oil of which there is nothing says nothing, whatever its sheet leaves open.
    private static Recipe WithoutAbsent(Recipe at) => at with { Oils = [.. at.Oils.Where(o => o.Share.Value > 0)] };
}

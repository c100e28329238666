using Chandlery.Core.Assessed;
using Chandlery.Core.Classified;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Judged;
using Chandlery.Core.Labelled;
using Chandlery.Core.Limits;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Asked.Ceilings;

/// <summary>Finds every load at which a consequence begins or ends, exactly.</summary>
public sealed class CeilingFinder
{
    // Just under and just over: far wider than the law's tolerance for binary fractions, far narrower than any balance.
    private const double Nudge = 1e-7;

    // No rule of law: the maker or a supplier declared it.
    private static readonly Citation DeclaredLimit = Citation.Of("declared limit");

    private readonly Verdict verdict;
    private readonly Func<Recipe, IReadOnlyList<LimitCheck>> limits;
    private readonly MixingLine line;
    private readonly IReadOnlyList<LinearSubstance> substances;
    private readonly double unknown0;
    private readonly double unknown1;

    /// <summary>Prepares a line of an assessed candle.</summary>
    /// <param name="assessment">The candle as it is.</param>
    /// <param name="wax">Its wax, for the limits.</param>
    /// <param name="varied">What is varied.</param>
    /// <param name="oilId">Which oil, where one is meant.</param>
    public CeilingFinder(Assessment assessment, Wax wax, Varied varied, string? oilId = null)
        : this(
            assessment.Verdict,
            MixingLine.Of(assessment.Composition.Recipe, varied, oilId),
            recipe => LimitChecker.Check(assessment.Candle, assessment.LimitedAs, assessment.Vessel, wax, recipe)
        ) { }

    /// <summary>Prepares any line of a recipe.</summary>
    /// <param name="verdict">What the law makes of the recipe somewhere on the line.</param>
    /// <param name="line">The line.</param>
    /// <param name="limits">The declared limits of a recipe.</param>
    public CeilingFinder(Verdict verdict, MixingLine line, Func<Recipe, IReadOnlyList<LimitCheck>> limits)
    {
        this.verdict = verdict;
        this.line = line;
        this.limits = limits;
        Composition at0 = Composer.Compose(line.At(0));
        Composition at1 = Composer.Compose(line.At(1));
        var byKey = at0.Ingredients.ToDictionary(Key);
        var resolved = verdict.Substances.ToDictionary(s => Key(s.Ingredient));
        substances =
        [
            .. at1.Ingredients.Select(i => new LinearSubstance(
                resolved[Key(i)] with
                {
                    Ingredient = i,
                },
                byKey[Key(i)].High.Value,
                i.High.Value,
                byKey[Key(i)].WholeHigh.Value,
                i.WholeHigh.Value
            )),
        ];
        unknown0 = at0.UnknownHigh.Value;
        unknown1 = at1.UnknownHigh.Value;
    }

    /// <summary>Where the candle is now.</summary>
    public double Now => line.Now;

    /// <summary>All ceilings up to the end of the line, lowest first.</summary>
    public IReadOnlyList<Ceiling> Find()
    {
        IEnumerable<double> crossings = Crossings
            .Of(verdict.Law.Rules, substances, UnknownAt)
            .Concat(LimitCrossings())
            .Where(x => x > 0 && x < line.Last)
            .Order();
        var ceilings = new List<Ceiling>();
        double last = double.NegativeInfinity;
        foreach (double x in crossings)
        {
            // Two rules that meet in one point differ by rounding only.
            if (x - last <= x * Nudge)
            {
                continue;
            }

            last = x;
            List<Consequence> consequences = [.. Difference(StateAt(x * (1 - Nudge)), StateAt(x * (1 + Nudge)))];
            if (consequences.Count > 0)
            {
                Recipe recipe = line.At(x);
                ceilings.Add(
                    new Ceiling(x, recipe.MeltLoadOfWax, recipe.MeltLoadOfCandle, recipe.Load, new MassPercent(100 * x), consequences)
                );
            }
        }

        return ceilings;
    }

    /// <summary>What holds at a fraction.</summary>
    public IReadOnlyCollection<string> HoldsAt(double x) => StateAt(x).Keys;

    /// <summary>What holds at a fraction, each with its kind.</summary>
    public IReadOnlyDictionary<string, ConsequenceKind> KindsAt(double x) => StateAt(x).ToDictionary(s => s.Key, s => s.Value.Kind);

    private double UnknownAt(double x) =>
        unknown0 + ((unknown1 - unknown0) * x) + substances.Where(s => !s.Substance.IsKnown).Sum(s => s.High(x));

    // Every limit's figure is a ratio of two linear functions of the fraction: three samples fix it.
    private IEnumerable<double> LimitCrossings()
    {
        IReadOnlyList<LimitCheck> a = LimitsAt(0);
        IReadOnlyList<LimitCheck> b = LimitsAt(0.25);
        IReadOnlyList<LimitCheck> c = LimitsAt(0.5);
        for (int i = 0; i < a.Count; i++)
        {
            if (
                a[i] is { Value: { } v0, Limit: { } limit }
                && b[i].Value is { } v1
                && c[i].Value is { } v2
                && double.IsFinite(v0 + v1 + v2)
            )
            {
                // v(x) = (p + q x) / (1 + r x)
                double p = v0;
                double r = (v1 - p == v2 - p && v1 == p) ? 0 : ((2 * (v1 - p)) - (v2 - p)) / (0.5 * (v2 - v1));
                double q = ((v1 * (1 + (0.25 * r))) - p) / 0.25;
                double slope = q - (limit * r);
                if (slope != 0 && double.IsFinite(slope))
                {
                    yield return (limit - p) / slope;
                }
            }
        }
    }

    private IReadOnlyList<LimitCheck> LimitsAt(double x) => limits(line.At(x));

    // What was measured of a liquid is no ingredient's doing, and is taken as it is.
    private static string SetBy(ClassResult result) =>
        result.Working.Lines.Count > 0 ? result.Working.Lines[0].Substance : "the liquid as measured";

    // A class with the lesser word may be filled further.
    private bool CallsFor(SignalWordChoice word, ClassResult result) =>
        verdict.Law.Edition.ElementsOf(result.Category).Any(e => e.SignalWord == word.Code);

    private Dictionary<string, (ConsequenceKind Kind, string SetBy, Citation Clause)> StateAt(double x)
    {
        var state = new Dictionary<string, (ConsequenceKind Kind, string SetBy, Citation Clause)>();
        Verdict at = verdict.Law.Judge(Composer.Compose(line.At(x)) with { Liquid = verdict.Composition.Liquid });
        foreach (ClassResult c in at.Classification.Classes)
        {
            state[$"{c.Category.Code} ({c.Statement})"] = (ConsequenceKind.HazardClass, SetBy(c), c.Working.Clause);
        }

        foreach (StatementChoice s in at.Label.Supplemental.Where(s => at.Classification.Supplemental == s.Code))
        {
            Sensitiser first = at.Classification.Sensitisers.MaxBy(n => n.Working.Value / n.Working.Threshold)!;
            state[s.Code] = (ConsequenceKind.Statement, first.Substance.Name, s.Clause);
        }

        if (at.Label.SignalWord is { } word)
        {
            state[$"signal word {word.Code}"] = (
                ConsequenceKind.SignalWord,
                SetBy(at.Classification.Classes.Where(c => CallsFor(word, c)).MaxBy(c => c.Working.Value / c.Working.Threshold)!),
                word.Clause
            );
        }

        foreach (LimitCheck limit in LimitsAt(x).Where(l => l.Holds == false))
        {
            state[$"limit broken: {limit.Name}"] = (ConsequenceKind.BrokenLimit, limit.Source, DeclaredLimit);
        }

        return state;
    }

    private static IEnumerable<Consequence> Difference(
        Dictionary<string, (ConsequenceKind Kind, string SetBy, Citation Clause)> under,
        Dictionary<string, (ConsequenceKind Kind, string SetBy, Citation Clause)> over
    ) =>
        over.Where(o => !under.ContainsKey(o.Key))
            .Select(o => new Consequence(o.Key, o.Value.Kind, true, o.Value.SetBy, o.Value.Clause))
            .Concat(
                under
                    .Where(u => !over.ContainsKey(u.Key))
                    .Select(u => new Consequence(u.Key, u.Value.Kind, false, u.Value.SetBy, u.Value.Clause))
            );

    private static string Key(ComposedIngredient i) => i.Identity.Cas?.Text ?? i.Identity.Ec?.Text ?? i.Identity.Name;
}

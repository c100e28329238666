using Chandlery.Core.Assessed;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Judged;
using Chandlery.Core.Law;
using Chandlery.Core.Limits;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Asked.Trials;

/// <summary>Says what a candle of a trial's blend would be, before there is a candle.</summary>
/// <param name="lawbook">The law.</param>
/// <param name="catalogue">Where the oils and the waxes of a blend are.</param>
/// <param name="asOf">The day that decides which rules hold.</param>
public sealed class TrialAssessor(Lawbook lawbook, Catalogue catalogue, DateOnly asOf)
{
    /// <summary>One verdict for each edition that rules at the places, in their order.</summary>
    /// <param name="trial">The blend.</param>
    /// <param name="question">The wax, the load and the places.</param>
    /// <param name="problems">Collects what is wrong, such as an oil that is not declared or the unknown mass of a drop.</param>
    /// <returns>Nothing when anything is wrong.</returns>
    public IReadOnlyList<TrialVerdict> Assess(Trial trial, TrialQuestion question, Problems problems)
    {
        if (RecipeMaker.FromBlend(trial.Oils, question.Wax, question.Load, catalogue, problems) is not { } recipe)
        {
            return [];
        }

        return [.. Laws(trial, question, problems).Select(l => Judge(trial, l.Question, recipe, l.Law))];
    }

    /// <summary>The largest load and the nearest blend that keep to what is asked, for each edition that rules at the places.</summary>
    /// <param name="trial">The blend to begin with.</param>
    /// <param name="question">The wax, the load and the places.</param>
    /// <param name="aims">What is asked.</param>
    /// <param name="alsoFrom">Oils that may be mixed in beside the trial's own.</param>
    /// <param name="problems">Collects what is wrong.</param>
    /// <returns>Nothing when anything is wrong.</returns>
    public IReadOnlyList<TrialSolution> Solve(
        Trial trial,
        TrialQuestion question,
        TrialAims aims,
        IReadOnlyList<Oil> alsoFrom,
        Problems problems
    ) =>
        [
            .. Solvers(trial, question, aims, alsoFrom, problems)
                .Select(s => (s, Nearest: s.Solver.NearestBlend()))
                .Select(f => new TrialSolution(
                    f.s.Law.Edition,
                    f.s.Question.Places,
                    f.s.Solver.MissedNow(),
                    f.s.Solver.LargestLoad(),
                    f.Nearest.Blend,
                    f.Nearest.IsProven
                )),
        ];

    /// <summary>
    /// The largest load of a blend that keeps to what is asked under each edition that rules at the places, without the search for
    /// another blend; null where none will do.
    /// </summary>
    /// <param name="trial">The blend.</param>
    /// <param name="question">The wax, the load and the places.</param>
    /// <param name="aims">What is asked.</param>
    /// <param name="problems">Collects what is wrong.</param>
    /// <returns>Nothing when anything is wrong.</returns>
    public IReadOnlyList<TrialAnswer?> LargestLoads(Trial trial, TrialQuestion question, TrialAims aims, Problems problems) =>
        [.. Solvers(trial, question, aims, [], problems).Select(s => s.Solver.LargestLoad())];

    private IReadOnlyList<(TrialQuestion Question, LawInForce Law, TrialSolver Solver)> Solvers(
        Trial trial,
        TrialQuestion question,
        TrialAims aims,
        IReadOnlyList<Oil> alsoFrom,
        Problems problems
    )
    {
        if (RecipeMaker.FromBlend(trial.Oils, question.Wax, question.Load, catalogue, problems) is not { } recipe)
        {
            return [];
        }

        IEnumerable<OilShare> added = alsoFrom
            .Where(o => recipe.Oils.All(own => own.Oil != o))
            .Select(o => new OilShare(o, MassPercent.Zero, MassPercent.Zero));
        Recipe all = recipe with { Oils = [.. recipe.Oils, .. added] };
        return [.. Laws(trial, question, problems).Select(l => (l.Question, l.Law, new TrialSolver(trial, l.Question, all, aims, l.Law)))];
    }

    private List<(TrialQuestion Question, LawInForce Law)> Laws(Trial trial, TrialQuestion question, Problems problems)
    {
        var laws = new List<(TrialQuestion, LawInForce)>();
        foreach (IGrouping<string, Place> group in question.Places.GroupBy(p => p.EditionId))
        {
            Edition edition = lawbook.Edition(group.Key);
            if (asOf < edition.KnownFrom)
            {
                problems.Add(Assessor.NoLawYet(edition, asOf));
                return [];
            }

            laws.Add((question with { Places = [.. group], Kind = lawbook.Kinds.Find(ProductKind.Usual) }, edition.On(asOf)));
        }

        return laws;
    }

    /// <summary>What one edition makes of a recipe that belongs to a trial.</summary>
    internal static TrialVerdict Judge(Trial trial, TrialQuestion question, Recipe recipe, LawInForce law)
    {
        Verdict verdict = law.Judge(Composer.Compose(recipe));
        IReadOnlyList<LimitCheck> limits = LimitsOf(question, recipe);
        return new TrialVerdict
        {
            Trial = trial,
            Question = question,
            Places = question.Places,
            Verdict = verdict,
            Limits = limits,
            Stops = [.. BlendStops.Of(recipe, limits, question.Kind!, verdict)],
            Unassessed = [.. verdict.Unassessed, .. Assessor.NotDeclared(recipe)],
        };
    }

    /// <summary>The limits that a recipe of a trial has.</summary>
    internal static IReadOnlyList<LimitCheck> LimitsOf(TrialQuestion question, Recipe recipe) =>
        [.. LimitChecker.OfBlend(As(question), question.Wax, recipe, question.AddingAt)];

    /// <summary>As what sort of product a trial is checked against limits.</summary>
    internal static LimitedAs As(TrialQuestion question) => new(question.Kind!.Name, question.Kind.Burns, question.Kind.IfraCategory);
}

using System.Text.Json;
using Chandlery.Core.Asked.Trials;
using Chandlery.Core.Assessed;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Bench;

public sealed class TrialTests : IDisposable
{
    private readonly MakersFolder folder = new();

    public void Dispose() => folder.Dispose();

    private static string Text(string oils, string more = "") => $"declares: trial\nname: T\non: 2026-11-03\noils:\n{oils}\n{more}";

    private static Problems Reading(string oils, string more = "")
    {
        var problems = new Problems();
        TestLaw.Read(problems, ("t.yaml", Text(oils, more)));
        return problems;
    }

    private (TrialAssessor Assessor, TrialQuestion Question, Catalogue Catalogue) Bench(double percentOfWax)
    {
        Catalogue catalogue = folder.Catalogue;
        return (
            new TrialAssessor(TestLaw.Lawbook, catalogue, TestLaw.Today),
            new TrialQuestion(
                catalogue.OfKind<Wax>().Single(w => w.Id == "soy-flake"),
                new FragranceLoad(new MassPercent(percentOfWax), LoadBasis.Wax),
                [TestLaw.Lawbook.FindPlace("IE")!]
            ),
            catalogue
        );
    }

    private TrialVerdict Assess(string oils, double percentOfWax)
    {
        folder.Write("trials/t.yaml", Text(oils));
        (TrialAssessor assessor, TrialQuestion question, Catalogue catalogue) = Bench(percentOfWax);
        var problems = new Problems();
        TrialVerdict verdict = assessor.Assess(catalogue.OfKind<Trial>().Single(t => t.Id == "t"), question, problems).Single();
        Assert.Empty(problems.Found);
        return verdict;
    }

    private TrialSolution Solve(string oils, double percentOfWax, TrialAim aim, CostBound? cost = null, params string[] also)
    {
        folder.Write("trials/t.yaml", Text(oils));
        (TrialAssessor assessor, TrialQuestion question, Catalogue catalogue) = Bench(percentOfWax);
        var problems = new Problems();
        TrialSolution solution = assessor
            .Solve(
                catalogue.OfKind<Trial>().Single(t => t.Id == "t"),
                question,
                new TrialAims([aim], cost),
                [.. catalogue.OfKind<Oil>().Where(o => also.Contains(o.Id))],
                problems
            )
            .Single();
        Assert.Empty(problems.Found);
        return solution;
    }

    [Theory]
    [InlineData("  - { oil: a, share: 100 }", "", "not a share")]
    [InlineData("  - { oil: a, drops: 3 }", "stars: 6", "'stars'")]
    [InlineData("  - { oil: a, drops: 3 }", "stars: 0", "'stars'")]
    [InlineData("  - { oil: a, drops: 3 }\n  - { oil: a, grams: 3 }", "", "stands here twice")]
    [InlineData("  []", "", "'oils' is missing")]
    [InlineData("  - { oil: a, drops: 3 }", "load: 8", "can mean two things")]
    public void What_cannot_be_meant_is_refused_with_its_place(string oils, string more, string says)
    {
        Problem problem = Assert.Single(Reading(oils, more).Found);
        Assert.Contains(says, problem.What, StringComparison.Ordinal);
        Assert.True(problem.Place.Line > 0);
    }

    [Fact]
    public void Drops_and_millilitres_become_grams_by_what_the_oils_declare()
    {
        // 12 drops of 24 mg and 0.15 ml of 1.02 g/ml.
        Recipe recipe = Assess("  - { oil: fig-leaf, drops: 12 }\n  - { oil: rain-on-slate, millilitres: 0.15 }", 6).Recipe;
        Assert.Equal(100 * 0.288 / (0.288 + 0.153), recipe.Oils[0].ShareOfBlend.Value, 9);
        Assert.Equal(100 * 6 / 106.0, recipe.Load.Value, 9);
    }

    [Fact]
    public void A_drop_that_nobody_has_weighed_is_a_problem_and_never_guessed()
    {
        folder.Write("trials/t.yaml", Text("  - { oil: rain-on-slate, drops: 6 }"));
        (TrialAssessor assessor, TrialQuestion question, Catalogue catalogue) = Bench(6);
        var problems = new Problems();
        Assert.Empty(assessor.Assess(catalogue.OfKind<Trial>().Single(t => t.Id == "t"), question, problems));
        Assert.Contains("the mass of its drop is not declared", Assert.Single(problems.Found).What, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(6.5)]
    [InlineData(12)]
    public void A_trial_is_what_a_candle_of_its_blend_is(double percentOfWax)
    {
        const string oils = "  - { oil: sweet-orange, grams: 3 }\n  - { oil: cedar-smoke, grams: 2 }";
        TrialVerdict trial = Assess(oils, percentOfWax);
        folder.Write(
            "candles/twin.yaml",
            FormattableString.Invariant(
                $"declares: candle\nname: Twin\nuse: indoor\nvessel: tin-100\nnetGrams: 80\nwax: soy-flake\nload: {{ percent: {percentOfWax}, of: wax }}\noils:\n{oils}\nwicks: {{ count: 1, trimToMm: 5 }}\nheadspaceMm: 4\nsoldIn: [IE]\n"
            )
        );
        Assessment candle = folder.Assess("twin", "IE");
        Assert.Equal(
            candle.Classification.Classes.Select(c => c.Category.Code),
            trial.Verdict.Classification.Classes.Select(c => c.Category.Code)
        );
        Assert.Equal(candle.Label.Hazard.Select(h => h.Text), trial.Verdict.Label.Hazard.Select(h => h.Text));
        Assert.Equal(candle.Label.Supplemental.Select(h => h.Text), trial.Verdict.Label.Supplemental.Select(h => h.Text));
        Assert.Equal(
            candle.Limits.Where(l => l.Source != candle.Vessel.Name).Select(l => (l.Name, l.Value, l.Holds)),
            trial.Limits.Select(l => (l.Name, l.Value, l.Holds))
        );
        Assert.Equal(candle.Unassessed, trial.Unassessed);
        Assert.Equal(percentOfWax > 10, trial.Stops.Count > 0);
    }

    // Fig Leaf holds up to 0.15 % of isoeugenol, whose limits are 0.01 % (class) and 0.001 % (name): see CeilingTests.
    [Theory]
    [InlineData(TrialAim.NoSensitiser, 0.001 / 0.0015)]
    [InlineData(TrialAim.NoClass, 0.01 / 0.0015)]
    public void The_largest_load_is_where_arithmetic_puts_it(TrialAim aim, double percentOfCandle)
    {
        TrialAnswer load = Solve("  - { oil: fig-leaf, drops: 12 }", 6, aim).LargestLoad!;
        double ofWax = 100 * percentOfCandle / (100 - percentOfCandle);
        Assert.Equal(Math.Floor(100 * ofWax) / 100, load.Load.Percent.Value, 9);
        Assert.Contains(aim == TrialAim.NoClass ? "Skin Sens. 1A" : "Isoeugenol", load.Beyond[0], StringComparison.Ordinal);
    }

    [Fact]
    public void The_limits_of_wax_and_oils_are_kept_whatever_is_asked()
    {
        TrialSolution solution = Solve("  - { oil: rain-on-slate, grams: 1 }", 14, TrialAim.Sale);
        Assert.Contains("load against Soy Flake 52", solution.MissedNow[0], StringComparison.Ordinal);
        Assert.Equal(10, solution.LargestLoad!.Load.Percent.Value, 9);
    }

    [Fact]
    public void A_wax_without_a_highest_load_has_no_largest_load()
    {
        folder.Change("waxes/soy-flake.yaml", "highestLoad: { percent: 10, of: wax }\n", "");
        Assert.Null(Solve("  - { oil: rain-on-slate, grams: 1 }", 6, TrialAim.NoClass).LargestLoad);
    }

    [Theory]
    [InlineData(TrialAim.NoClass, 8)]
    [InlineData(TrialAim.NoSensitiser, 3)]
    public void Of_two_oils_no_blend_on_a_fine_grid_is_nearer(TrialAim aim, double percentOfWax)
    {
        const string oils = "  - { oil: sweet-orange, grams: 4 }\n  - { oil: rain-on-slate, grams: 1 }";
        TrialAnswer near = Solve(oils, percentOfWax, aim).Nearest!;
        Assert.InRange(near.MovedPercent, 0.01, 80);
        TrialAims aims = new([aim], null);
        Assert.Empty(aims.MissedBy(near.Verdict));
        for (int i = 0; i <= 1000; i++)
        {
            double orange = i / 10.0;
            if (Math.Abs(orange - 80) < near.MovedPercent - 0.02)
            {
                string rain = orange < 100 ? FormattableString.Invariant($"\n  - {{ oil: rain-on-slate, grams: {100 - orange} }}") : "";
                TrialVerdict at = Assess(FormattableString.Invariant($"  - {{ oil: sweet-orange, grams: {orange} }}{rain}"), percentOfWax);
                Assert.NotEmpty(aims.MissedBy(at));
                i += 20;
            }
        }
    }

    [Fact]
    public void Of_three_oils_no_blend_on_a_grid_is_much_nearer()
    {
        const string oils = "  - { oil: sweet-orange, grams: 3 }\n  - { oil: cedar-smoke, grams: 4 }\n  - { oil: rain-on-slate, grams: 3 }";
        TrialAnswer near = Solve(oils, 8, TrialAim.NoClass).Nearest!;
        TrialAims aims = new([TrialAim.NoClass], null);
        Assert.Empty(aims.MissedBy(near.Verdict));
        const int step = 4;
        for (int orange = 0; orange <= 100; orange += step)
        {
            for (int cedar = 0; orange + cedar <= 100; cedar += step)
            {
                double exchanged = (Math.Abs(orange - 30) + Math.Abs(cedar - 40) + Math.Abs(100 - orange - cedar - 30)) / 2.0;
                if (exchanged < near.MovedPercent - 0.5)
                {
                    string[] lines =
                    [
                        .. new[] { ("sweet-orange", orange), ("cedar-smoke", cedar), ("rain-on-slate", 100 - orange - cedar) }
                            .Where(l => l.Item2 > 0)
                            .Select(l => $"  - {{ oil: {l.Item1}, grams: {l.Item2} }}"),
                    ];
                    Assert.NotEmpty(aims.MissedBy(Assess(string.Join('\n', lines), 8)));
                }
            }
        }
    }

    // Of blends of three oils at random: what is answered keeps to what was asked, and no blend on a grid of every percent is nearer.
    [Theory]
    [InlineData(1, TrialAim.NoClass)]
    [InlineData(2, TrialAim.NoClass)]
    [InlineData(3, TrialAim.NoSensitiser)]
    [InlineData(4, TrialAim.NoSensitiser)]
    [InlineData(5, TrialAim.Sale)]
    public void Of_three_oils_none_on_a_fine_grid_is_nearer_than_what_was_proven(int seed, TrialAim aim)
    {
        var random = new Random(seed);
        (TrialAssessor assessor, TrialQuestion question, Catalogue catalogue) = Bench(3 + (random.NextDouble() * 7));
        Trial any = catalogue.OfKind<Trial>().First();
        string[] oils = [.. catalogue.OfKind<Oil>().OrderBy(o => o.Id, StringComparer.Ordinal).Select(o => o.Id)];
        random.Shuffle(oils);
        int first = random.Next(1, 80);
        double[] own = [first, 95 - first, 5];
        var aims = new TrialAims([aim], null);
        var problems = new Problems();
        TrialSolution solution = assessor.Solve(Blend(own), question, aims, [], problems).Single();
        Assert.True(solution.IsNearestProven);
        double bound = double.PositiveInfinity;
        if (solution.Nearest is { } near)
        {
            Assert.Empty(aims.MissedBy(near.Verdict));
            bound = near.MovedPercent;
        }

        for (int a = 0; a <= 100; a++)
        {
            for (int b = 0; a + b <= 100; b++)
            {
                double[] at = [a, b, 100 - a - b];
                if (own.Zip(at, (x, y) => Math.Abs(x - y)).Sum() / 2 < bound - 1e-6)
                {
                    TrialVerdict verdict = assessor.Assess(Blend(at), question, problems).Single();
                    Assert.NotEmpty(aims.MissedBy(verdict));
                }
            }
        }

        Assert.Empty(problems.Found);

        Trial Blend(double[] grams) =>
            any with
            {
                Oils =
                [
                    .. grams
                        .Select((g, i) => new OilPart(new Reference(oils[i], any.Place), g, OilMeasure.Grams, any.Place))
                        .Where(p => p.Amount > 0),
                ],
            };
    }

    // By hand: the second oil counts twice what the first does, the third nothing; a thousand steps of the second must go.
    [Fact]
    public void A_search_finds_the_nearest_by_hand()
    {
        static bool Keeps(IReadOnlyList<int> s) => s[0] + (2 * s[1]) <= 10_000;
        (IReadOnlyList<int>? shares, bool isProven) = new BlendSearch([4000, 4000, 2000], Keeps, Keeps).NearerThan(double.PositiveInfinity);
        Assert.True(isProven);
        Assert.Equal([4000, 3000, 3000], shares!);
        (shares, isProven) = new BlendSearch([4000, 4000, 2000], Keeps, Keeps).NearerThan(1000);
        Assert.Null(shares);
        Assert.True(isProven);
    }

    [Fact]
    public void Nearest_takes_an_oil_that_is_offered_and_keeps_to_what_was_asked()
    {
        const string oils = "  - { oil: sweet-orange, grams: 2 }\n  - { oil: harbour-fog, grams: 2 }";
        TrialSolution alone = Solve(oils, 8, TrialAim.NoClass);
        TrialSolution helped = Solve(oils, 8, TrialAim.NoClass, null, "rain-on-slate");
        Assert.NotEmpty(helped.MissedNow);
        Assert.Contains(helped.Nearest!.Recipe.Oils, o => o.Oil.Id == "rain-on-slate");
        Assert.Equal(100, helped.Nearest.Recipe.Oils.Sum(o => o.ShareOfBlend.Value), 6);
        Assert.True(alone.Nearest is null || alone.Nearest.MovedPercent >= helped.Nearest.MovedPercent);
    }

    [Fact]
    public void An_oil_whose_certificate_or_price_is_not_known_keeps_to_nothing()
    {
        folder.Change("oils/cedar-smoke.yaml", "limits: { \"12\": 60 }", "limits: { \"4\": 60 }");
        Assert.Contains(
            Solve("  - { oil: cedar-smoke, grams: 1 }", 5, TrialAim.Ifra).MissedNow,
            m => m.Contains("No IFRA certificate", StringComparison.Ordinal)
        );
        TrialSolution costly = Solve(
            "  - { oil: cedar-smoke, grams: 1 }",
            5,
            TrialAim.Sale,
            new CostBound(new Dictionary<string, double>(), 1)
        );
        Assert.Contains(costly.MissedNow, m => m.Contains("No lot says what", StringComparison.Ordinal));
        Assert.Null(costly.LargestLoad);
    }

    [Fact]
    public void A_cost_is_a_bound_like_any_other()
    {
        // 0.10 a gram: 5 a kilogram of candle is 50 g of oil, 5 % of the candle, 5.263 % of the wax.
        var cost = new CostBound(new Dictionary<string, double> { ["rain-on-slate"] = 0.1 }, 5);
        TrialAnswer load = Solve("  - { oil: rain-on-slate, grams: 1 }", 8, TrialAim.Sale, cost).LargestLoad!;
        Assert.Equal(5.26, load.Load.Percent.Value, 9);
    }

    [Fact]
    public void Whoever_only_tries_blends_needs_no_candle_yet()
    {
        foreach (string kind in new[] { "candles", "batches", "dispatches", "incidents", "tests", "weighings" })
        {
            Directory.Delete(Path.Combine(folder.Path, kind), recursive: true);
        }

        (int code, string said, string errors) = Command.Run("trials", folder.Path, "--place", "IE");
        Assert.Equal((0, ""), (code, errors));
        Assert.Contains("orchard-pier", said, StringComparison.Ordinal);
        Assert.Contains("name a place with --place", Command.Run("trials", folder.Path).Errors, StringComparison.Ordinal);
        (code, _, errors) = Command.Run("assess", folder.Path);
        Assert.Equal(2, code);
        Assert.Contains("No candle is declared here.", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Commands_tell_trials_and_blends()
    {
        (int code, string said, string errors) = Command.Run("trials", folder.Path, "--json");
        Assert.Equal("", errors);
        using JsonDocument json = JsonDocument.Parse(said);
        Assert.Equal([5, 4, 2], json.RootElement.EnumerateArray().Select(l => l.GetProperty("stars").GetInt32()));
        Assert.Equal(0, code);

        (code, said, errors) = Command.Run("blend", folder.Path, "--trial", "orchard-pier", "--keep", "no-euh208", "--place", "IE");
        Assert.Equal((0, ""), (code, errors));
        Assert.Contains("largest load of this blend", said, StringComparison.Ordinal);
        Assert.Equal(2, Command.Run("trials", folder.Path, "--place", "XX").Code);
        Assert.Equal(2, Command.Run("blend", folder.Path, "--trial", "orchard-peer").Code);
    }
}

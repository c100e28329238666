using Chandlery.Core.Asked.Ceilings;
using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Files;
using Chandlery.Tests.Law;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Ceilings;

public class CeilingTests
{
    private static Wax WaxOf(Assessment a) =>
        DeclarationFolder.Open(TestLaw.DemoFolder, TestLaw.Lawbook.Vocabulary).Catalogue.OfKind<Wax>().Single(w => w.Id == a.Candle.Wax.Id);

    private static CeilingFinder Finder(string candle, Varied varied = Varied.Load, string? oil = null)
    {
        Assessment a = candle == "storm-jar" ? TestLaw.Stopped() : TestLaw.Demo($"candles/{candle}.yaml");
        return new CeilingFinder(a, WaxOf(a), varied, oil);
    }

    // Fig Leaf holds up to 0.15 % of isoeugenol, whose limits are 0.01 % (class) and 0.001 % (name): 0.01 / 0.0015 and
    // 0.001 / 0.0015 percent of the candle.
    [Fact]
    public void TheTinsCeilingsAreWhereArithmeticPutsThem()
    {
        IReadOnlyList<Ceiling> ceilings = Finder("fig-tin").Find();
        Ceiling named = ceilings.Single(c => c.Consequences.Any(x => x.What == "EUH208" && x.Begins));
        Assert.Equal(0.001 / 0.0015, named.OfCandle.Value, 9);
        Ceiling classed = ceilings.Single(c =>
            c.Consequences.Any(x => x.What.StartsWith("Skin Sens. 1A", StringComparison.Ordinal) && x.Begins)
        );
        Assert.Equal(0.01 / 0.0015, classed.OfCandle.Value, 9);
        Assert.Equal(100 * (0.01 / 0.0015) / (100 - (0.01 / 0.0015)), classed.OfWax.Value, 9);
        Assert.All(classed.Consequences, c => Assert.Equal("Isoeugenol", c.SetBy));
        Ceiling wax = ceilings.Single(c => c.Consequences.Any(x => x.What.Contains("load against Soy Flake 52", StringComparison.Ordinal)));
        Assert.Equal(10, wax.OfWax.Value, 9);
    }

    // Skin Irrit. 2 (Warning) is far over its 10 % where Eye Dam. 1 (Danger) just reaches its 3 %.
    [Fact]
    public void A_signal_word_is_set_by_what_calls_for_it()
    {
        Catalogue catalogue = RandomProduct.Read(
            new RandomBlend(
                10,
                [
                    "  - { name: irritant, share: 80, classes: [\"Skin Irrit. 2, H315\"] }",
                    "  - { name: corrosive, share: 15, classes: [\"Eye Dam. 1, H318\"] }",
                ],
                ["  - { name: other, share: 100, classes: not classified }"],
                "  - { name: third, share: 1, classes: not classified }",
                "",
                IsOld: false
            ),
            "jar"
        );
        var problems = new Problems();
        Assessment a = new Assessor(TestLaw.Lawbook, catalogue, TestLaw.Today)
            .Assess(catalogue.OfKind<Candle>().Single(), "IE", problems)
            .Single();
        IEnumerable<Consequence> begins = new CeilingFinder(a, catalogue.OfKind<Wax>().Single(), Varied.Load)
            .Find()
            .SelectMany(c => c.Consequences)
            .Where(c => c.Begins && c.Kind == ConsequenceKind.SignalWord);
        Assert.Equal("corrosive", begins.Single(c => c.What == "signal word Danger").SetBy);
    }

    [Theory]
    [InlineData("harbour-bowl", Varied.Load, null)]
    [InlineData("harbour-bowl", Varied.OneOil, "cedar-smoke")]
    [InlineData("harbour-bowl", Varied.BlendShare, "fig-leaf")]
    [InlineData("fig-tin", Varied.Load, null)]
    [InlineData("slate-jar", Varied.Load, null)]
    [InlineData("storm-jar", Varied.BlendShare, "sweet-orange")]
    public void EachCeilingIsATrueBoundaryAndNothingHappensBetweenThem(string candle, Varied varied, string? oil)
    {
        CeilingFinder finder = Finder(candle, varied, oil);
        double[] at = [.. finder.Find().Select(c => c.Fraction)];
        Assert.NotEmpty(at);
        foreach (double x in at)
        {
            Assert.NotEqual(finder.HoldsAt(x * (1 - 1e-6)).Order(), finder.HoldsAt(x * (1 + 1e-6)).Order());
        }

        // Between two neighbours the same things hold everywhere: a dense look finds no change that was missed.
        double end = varied == Varied.BlendShare ? 1 : 0.5;
        double[] edges = [1e-9, .. at, end];
        for (int i = 0; i + 1 < edges.Length; i++)
        {
            double from = edges[i] * (1 + 1e-6);
            double to = edges[i + 1] * (1 - 1e-6);
            IEnumerable<string> first = finder.HoldsAt(from).Order();
            for (int k = 1; k <= 40; k++)
            {
                Assert.Equal(first, finder.HoldsAt(from + ((to - from) * k / 40)).Order());
            }
        }
    }

    [Fact]
    public void WhereTheCandleIsNowTheLineSaysWhatTheAssessmentSays()
    {
        Assessment a = TestLaw.Demo("candles/harbour-bowl.yaml");
        var finder = new CeilingFinder(a, WaxOf(a), Varied.Load);
        IEnumerable<string> expected = a
            .Classification.Classes.Select(c => $"{c.Category.Code} ({c.Statement})")
            .Append($"signal word {a.Label.SignalWord!.Code}")
            .Concat(a.Limits.Where(l => l.Holds == false).Select(l => $"limit broken: {l.Name}"));
        Assert.Equal(expected.Order(), finder.HoldsAt(finder.Now).Order());
    }
}

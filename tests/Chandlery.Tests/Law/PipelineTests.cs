using Chandlery.Core.Asked.Ceilings;
using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Tests.Support;
using Chandlery.Yaml;
using CsCheck;

namespace Chandlery.Tests.Law;

/// <summary>
/// Assessment, ceilings, comparisons and trace ask one pipeline, so they cannot disagree: tried for every place on random blends.
/// </summary>
public sealed class PipelineTests
{
    // Classes and rules are tried here and no wording: Norway's language has no statements, and nothing else of it would be tried.
    private static readonly Lawbook InEnglish = TestLaw.Lawbook with
    {
        Places = [.. TestLaw.Lawbook.Places.Select(p => p with { Languages = [LanguageCode.TryParse("en")!] })],
    };

    private static Assessment Assess(Catalogue catalogue, string place)
    {
        var problems = new Problems();
        IReadOnlyList<Assessment> all = new Assessor(InEnglish, catalogue, TestLaw.Today).Assess(
            catalogue.OfKind<Candle>().Single(),
            place,
            problems
        );
        Assert.Empty(problems.Found);
        return all.Single();
    }

    /// <summary>A place for each edition of the law, and each form of product there: a new edition joins by itself.</summary>
    public static TheoryData<string, string> Products()
    {
        var data = new TheoryData<string, string>();
        foreach (Place place in TestLaw.Lawbook.Places.DistinctBy(p => p.EditionId))
        {
            foreach (string form in RandomProduct.Forms)
            {
                data.Add(place.Code.Text, form);
            }
        }

        return data;
    }

    // Fewer blends of each, rather than fewer places or forms: each is an edition's rules over all kinds of substances.
    private const int Blends = 6;

    [Theory]
    [MemberData(nameof(Products))]
    public void The_ceiling_at_the_present_load_says_what_the_assessment_says(string place, string form) =>
        RandomProduct.Blend.Sample(
            blend =>
            {
                Catalogue catalogue = RandomProduct.Read(blend, form);
                Assessment a = Assess(catalogue, place);
                var finder = new CeilingFinder(a, catalogue.OfKind<Wax>().Single(), Varied.Load);
                IReadOnlyCollection<string> now = finder.HoldsAt(finder.Now);
                Assert.Equal(
                    a.Classification.Classes.Select(c => $"{c.Category.Code} ({c.Statement})").Order(),
                    now.Where(s => s.EndsWith(')') && !s.StartsWith("limit", StringComparison.Ordinal)).Order()
                );
                Assert.Equal(
                    a.Label.SignalWord is { } word ? $"signal word {word.Text}" : null,
                    now.FirstOrDefault(s => s.StartsWith("signal", StringComparison.Ordinal))
                );
                Assert.Equal(
                    a.Label.Supplemental.Where(s => s.Code == a.Classification.Supplemental).Select(s => s.Text),
                    now.Where(s => a.Classification.Supplemental is { } code && s == code.Text)
                );
            },
            iter: Blends
        );

    [Theory]
    [MemberData(nameof(Products))]
    public void Nothing_changes_from_a_state_to_itself(string place, string form) =>
        RandomProduct.Blend.Sample(
            blend =>
            {
                CandleState Once() => CandleState.Of(Assess(RandomProduct.Read(blend, form), place));
                CatalogueEntry<CandleState> Entry(CandleState state) => new("candle", new TextPlace("t", 1, 1), [state], []);
                Assert.Empty(StateComparison.Compare([Entry(Once())], [Entry(Once())]));
            },
            iter: Blends
        );

    [Theory]
    [MemberData(nameof(Products))]
    public void The_trace_names_the_rule_that_decided_and_the_day_on_which_it_binds(string place, string form) =>
        RandomProduct.Blend.Sample(
            blend =>
            {
                Assessment a = Assess(RandomProduct.Read(blend, form), place);
                foreach (ClassRule rule in a.Edition.RulesFor(a.Kind.State))
                {
                    bool holds = a.Verdict.Law.Rules.Contains(rule);
                    string said = Tracer.Explain(a, rule.Results.First().Code)!;
                    Assert.Contains(rule.Clause, said, StringComparison.Ordinal);
                    if (a.Verdict.ResultOf(rule) is { } result)
                    {
                        Assert.Contains(result.Category.Code, said, StringComparison.Ordinal);
                        string reached = Tracer.Explain(a, result.Category.Code)!;
                        Assert.Contains(rule.Clause, reached, StringComparison.Ordinal);
                        Assert.True(rule is not FlashRule || !reached.Contains("of the present amount", StringComparison.Ordinal), reached);
                    }
                    else if (holds && rule is FlashRule && a.Verdict.FlammabilityUnknown is { } unknown)
                    {
                        Assert.Contains(unknown.What, said, StringComparison.Ordinal);
                        Assert.DoesNotContain("no class is reached", said, StringComparison.Ordinal);
                    }
                    else
                    {
                        Assert.Contains(
                            a.Kind.Say(holds ? "no class is reached" : "does not bind the candle"),
                            said,
                            StringComparison.Ordinal
                        );
                        Assert.True(!holds || a.Verdict.FillingOf(rule).All(f => f.Filling < 1), said);
                    }

                    if (rule.InForce.BindsFrom(a.Candle.OnMarketSince) is { } day)
                    {
                        Assert.Contains(a.Kind.Say($"from {day:yyyy-MM-dd} on for this candle"), said, StringComparison.Ordinal);
                    }
                }
            },
            iter: Blends
        );

    [Fact]
    public void A_rule_that_binds_later_is_not_said_to_be_filled()
    {
        Catalogue catalogue = RandomProduct.Read(
            new RandomBlend(
                12,
                ["  - { name: s1, share: 20, m: 10, classes: [\"ED HH 1, EUH380\"] }"],
                ["  - { name: s2, share: 1, m: 1, classes: not classified }"],
                "  - { name: s3, share: 1, classes: not classified }",
                "",
                IsOld: true
            ),
            "jar"
        );
        string said = Tracer.Explain(Assess(catalogue, "IE"), "EUH380")!;
        Assert.Contains("does not bind the candle on 2026-11-25", said, StringComparison.Ordinal);
        Assert.Contains("from 2028-05-01 on for this candle (on the market since 2024-01-01)", said, StringComparison.Ordinal);
        Assert.DoesNotContain("% of the way", said, StringComparison.Ordinal);
    }
}

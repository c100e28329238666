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
    private static readonly string[] Classes =
    [
        "Skin Sens. 1A, H317",
        "Skin Sens. 1B, H317",
        "Resp. Sens. 1, H334",
        "Skin Irrit. 2, H315",
        "Skin Corr. 1B, H314",
        "Eye Dam. 1, H318",
        "Acute Tox. 4, H302",
        "Acute Tox. 3, H331",
        "Aquatic Acute 1, H400",
        "Aquatic Chronic 1, H410",
        "Aquatic Chronic 3, H412",
        "Repr. 2, H361d",
        "STOT RE 2, H373",
        "ED HH 1, EUH380",
        "PBT, EUH440",
    ];

    private static readonly Gen<string> Ingredient = Gen.Select(
        Gen.Int[0, 99],
        Gen.Double[0.05, 20],
        Gen.Int[0, Classes.Length - 1].Array[0, 3],
        (id, percent, classes) =>
            $"  - {{ name: s{id}, share: {percent.ToString("0.###", System.Globalization.CultureInfo.InvariantCulture)}, m: 10, classes: {List(classes)} }}"
    );

    // Load, ingredients of two oils, since when it is sold.
    private static readonly Gen<(double Load, string[] First, string[] Second, bool Old)> Blend = Gen.Select(
        Gen.Double[0.5, 12],
        Ingredient.Array[1, 5],
        Ingredient.Array[1, 4],
        Gen.Bool
    );

    private static string List(int[] classes) =>
        classes.Length == 0
            ? "not classified"
            : "[" + string.Join(", ", classes.Distinct().DistinctBy(c => Classes[c][..8]).Select(c => $"\"{Classes[c]}\"")) + "]";

    private static Catalogue Read((double Load, string[] First, string[] Second, bool Old) blend)
    {
        var problems = new Problems();
        string load = blend.Load.ToString("0.###", System.Globalization.CultureInfo.InvariantCulture);
        string since = blend.Old ? "\nonMarketSince: 2024-01-01" : "";
        Catalogue catalogue = TestLaw.Read(
            problems,
            ("w.yaml", "declares: wax\nname: W\nsupplier: N\ningredients: [ { name: wax, share: 100, classes: not classified } ]"),
            ("o.yaml", Oil("O", blend.First)),
            ("p.yaml", Oil("P", blend.Second)),
            ("v.yaml", "declares: vessel\nname: V\nmaterial: glass\nbrimfulMl: 300"),
            (
                "m.yaml",
                "declares: maker\nname: M\naddress: [A]\ntelephone: '+353 1 555 0100'\nemergencyTelephone: '+353 1 555 0101'\nweb: https://m.example\nvat: { country: IE, number: '1234567FA' }"
            ),
            (
                "candle.yaml",
                $"declares: candle\nname: C\nuse: indoor\nvessel: v\nnetGrams: 200\nwax: w\nload: {{ percent: {load}, of: wax }}\noils: [ {{ oil: o, share: 60 }}, {{ oil: p, share: 40 }} ]\nwicks: {{ count: 1, trimToMm: 5 }}\nformulationNumber: 1\nsoldIn: [IE]{since}"
            )
        );
        Assert.Empty(problems.Found);
        return catalogue;
    }

    private static string Oil(string name, string[] lines) =>
        $"declares: oil\nname: {name}\nsupplier: N\ndocument: D\nrevised: 2026-01-01\ningredients:\n{string.Join('\n', lines.DistinctBy(l => l.Split(',')[0]))}";

    private static Assessment Assess(Catalogue catalogue, string place)
    {
        var problems = new Problems();
        Assessment a = new Assessor(TestLaw.Lawbook, catalogue, TestLaw.Today).Assess(catalogue.OfKind<Candle>().Single(), place, problems)[
            0
        ];
        Assert.Empty(problems.Found);
        return a;
    }

    public static TheoryData<string> Places() => ["IE", "NI", "GB", "US", "ZA", "UN"];

    [Theory]
    [MemberData(nameof(Places))]
    public void The_ceiling_at_the_present_load_says_what_the_assessment_says(string place) =>
        Blend.Sample(
            blend =>
            {
                Catalogue catalogue = Read(blend);
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
            iter: 60
        );

    [Theory]
    [MemberData(nameof(Places))]
    public void Nothing_changes_from_a_state_to_itself(string place) =>
        Blend.Sample(
            blend =>
            {
                CandleState Once() => CandleState.Of(Assess(Read(blend), place));
                CatalogueEntry<CandleState> Entry(CandleState state) => new("candle", new TextPlace("t", 1, 1), [state], []);
                Assert.Empty(StateComparison.Compare([Entry(Once())], [Entry(Once())]));
            },
            iter: 60
        );

    [Theory]
    [MemberData(nameof(Places))]
    public void The_trace_names_the_rule_that_decided_and_the_day_on_which_it_binds(string place) =>
        Blend.Sample(
            blend =>
            {
                Assessment a = Assess(Read(blend), place);
                foreach (ClassRule rule in a.Edition.Rules)
                {
                    bool holds = a.Verdict.Law.Rules.Contains(rule);
                    string said = Tracer.Explain(a, rule.Results.First().Code)!;
                    Assert.Contains(rule.Clause, said, StringComparison.Ordinal);
                    if (a.Verdict.ResultOf(rule) is { } result)
                    {
                        Assert.Contains(result.Category.Code, said, StringComparison.Ordinal);
                    }
                    else
                    {
                        Assert.Contains(holds ? "no class is reached" : "does not bind the candle", said, StringComparison.Ordinal);
                        Assert.True(!holds || a.Verdict.FillingOf(rule).All(f => f.Filling < 1), said);
                    }

                    if (rule.InForce.BindsFrom(a.Candle.OnMarketSince) is { } day)
                    {
                        Assert.Contains($"from {day:yyyy-MM-dd} on for this candle", said, StringComparison.Ordinal);
                    }
                }
            },
            iter: 40
        );

    [Fact]
    public void A_rule_that_binds_later_is_not_said_to_be_filled()
    {
        Catalogue catalogue = Read(
            (
                12,
                ["  - { name: s1, share: 20, m: 10, classes: [\"ED HH 1, EUH380\"] }"],
                ["  - { name: s2, share: 1, m: 1, classes: not classified }"],
                true
            )
        );
        string said = Tracer.Explain(Assess(catalogue, "IE"), "EUH380")!;
        Assert.Contains("does not bind the candle on 2026-11-25", said, StringComparison.Ordinal);
        Assert.Contains("from 2028-05-01 on for this candle (on the market since 2024-01-01)", said, StringComparison.Ordinal);
        Assert.DoesNotContain("% of the way", said, StringComparison.Ordinal);
    }
}

using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Law;

/// <summary>What the law makes of whole candles, and what its data must hold; what it makes of a mixture stands in its cases.</summary>
public class AssessedLawTests
{
    [Fact]
    public void EveryRuleNamesItsClauseAndConfidence() =>
        Assert.All(
            TestLaw.Eu.Rules,
            r =>
            {
                Assert.StartsWith("CLP Annex I, ", r.Clause, StringComparison.Ordinal);
                Assert.NotEmpty(r.Confidence);
            }
        );

    [Fact]
    public void AspirationIsExplainedNotComputed()
    {
        Assessment a = TestLaw.Demo("candles/harbour-bowl.yaml");
        Assert.Contains(
            a.Unassessed,
            u => u.Contains("Asp. Tox. 1", StringComparison.Ordinal) && u.Contains("3.10.3.3.1", StringComparison.Ordinal)
        );
    }

    [Outside("Regulation (EU) 2025/2439: the label format of 2024/2865 binds from 1 January 2028; the agreement of June 2026 is not law")]
    [Fact]
    public void TheNextChangeOfTheLawIsKnownApartFromExpectation()
    {
        Assessment tin = TestLaw.Demo("candles/fig-tin.yaml");
        Assert.Equal(new DateOnly(2028, 1, 1), tin.NextLaw!.On);
        Assert.Equal(LegalStatus.Expected, tin.NextExpected!.Status);
        Assert.Equal(new DateOnly(2030, 1, 1), tin.NextExpected.On);
        Assert.Contains("0.9 mm", tin.NextExpected.What[0], StringComparison.Ordinal);

        // What is expected is never applied.
        Assert.Equal("table-1.3-of-2024-2865", TestLaw.Eu.Formats.On(new DateOnly(2031, 1, 1)).Id);
    }

    [Fact]
    public void WhatTheNextChangeDoesToClassesIsWhatTheCandleGetsOnThatDay()
    {
        foreach (string file in Directory.EnumerateFiles(Path.Combine(TestLaw.DemoFolder, "candles"), "*.yaml"))
        {
            string candle = $"candles/{Path.GetFileName(file)}";
            Assessment now = TestLaw.Demo(candle, "IE");
            if (now.NextLaw is { } change)
            {
                Assessment then = TestLaw.Demo(candle, "IE", change.On);
                bool differs = !Classes(now).SequenceEqual(Classes(then));
                Assert.True(
                    differs == change.What.Any(w => w.StartsWith("classes:", StringComparison.Ordinal)),
                    $"{candle}: {string.Join("; ", change.What)}"
                );
            }
        }

        static IEnumerable<string> Classes(Assessment a) => a.Classification.Classes.Select(c => c.Category.Code).Order();
    }

    [Fact]
    public void AnOilKnownOnlyByItsOwnClassesIsWeakerEvidence()
    {
        var problems = new Problems();
        const string oil =
            "declares: oil\nname: Mystery\nsupplier: Nobody\ndocument: SDS 1\nrevised: 2026-01-01\nclasses: [\"Skin Sens. 1, H317\"]\ningredients: []";
        string folder = TestLaw.DemoFolder;
        (string, string)[] files =
        [
            ("mystery.yaml", oil),
            .. Directory
                .EnumerateFiles(folder, "*.yaml", SearchOption.AllDirectories)
                .Select(f =>
                    (
                        f,
                        File.ReadAllText(f)
                            .Replace("{ oil: rain-on-slate, share: 100 }", "{ oil: mystery, share: 100 }", StringComparison.Ordinal)
                    )
                ),
        ];
        Catalogue catalogue = TestLaw.Read(problems, files);
        Candle jar = catalogue.OfKind<Candle>().Single(c => c.Id == "slate-jar");
        Assessment a = new Assessor(TestLaw.Lawbook, catalogue, TestLaw.Today)
            .Assess(jar with { FormulationNumber = 3 }, "IE", problems)
            .Single();
        Assert.Empty(problems.Found);
        Assert.Equal("Skin Sens. 1", a.Classification.Classes.Single().Category.Code);
        Assert.Contains(a.Unassessed, u => u.Contains("weaker evidence", StringComparison.Ordinal));
    }

    [Fact]
    public void AContradictionBetweenAnOilsClassesAndItsIngredientsIsReported() =>
        Assert.Contains(
            TestLaw.Demo("candles/harbour-bowl.yaml").Findings,
            f => f.What.StartsWith("Sweet Orange Essential Oil: its sheet says nothing for aquatic, acute", StringComparison.Ordinal)
        );

    [Outside("CLP Art. 45 and Annex VIII: a UFI for hazards to health, none for the environment alone (from memory)")]
    [Fact]
    public void AUfiIsAskedForWhereHealthIsAtStake()
    {
        Assert.NotNull(TestLaw.Demo("candles/harbour-bowl.yaml").Ufi);
        Assert.Null(TestLaw.Demo("candles/fig-tin.yaml").Ufi);
        Assert.Null(TestLaw.Demo("candles/harbour-bowl.yaml", "GB").Ufi);
        Assert.NotNull(TestLaw.Demo("candles/harbour-bowl.yaml", "NI").Ufi);
    }
}

using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.SafetyFiles.Tests;

/// <summary>Which burn tests hold for a candle as it is, and which are missing.</summary>
/// <param name="Candle">The candle.</param>
/// <param name="Valid">Tests of this candle as it is, newest first.</param>
/// <param name="Outdated">Tests of what it was before, each with what has changed.</param>
/// <param name="Missing">What must be tested, a sentence each; empty when nothing.</param>
public sealed record CandleTests(
    Candle Candle,
    IReadOnlyList<JudgedTest> Valid,
    IReadOnlyList<(JudgedTest Test, string Changed)> Outdated,
    IReadOnlyList<string> Missing
)
{
    /// <summary>Whether a test of the candle as it is was passed and nothing is missing.</summary>
    public bool IsDone => Missing.Count == 0;

    /// <summary>The tests of a candle.</summary>
    public static CandleTests Of(Candle candle, Catalogue catalogue, FileRules rules)
    {
        double? oilShare = OilShare(candle, catalogue);
        var valid = new List<JudgedTest>();
        var outdated = new List<(JudgedTest, string)>();
        foreach (Test test in catalogue.OfKind<Test>().Where(t => t.Candle.Id == candle.Id).OrderByDescending(t => t.On))
        {
            string changed = string.Join("; ", Changes(candle, test, oilShare));
            JudgedTest judged = TestJudge.Judge(test);
            if (changed.Length == 0)
            {
                valid.Add(judged);
            }
            else
            {
                outdated.Add((judged, changed));
            }
        }

        return new CandleTests(candle, valid, outdated, [.. WhatIsMissing(valid, outdated, rules), .. Stronger(candle, valid, catalogue)]);
    }

    // What was poured may hold more oil than what was planned and tested.
    private static IEnumerable<string> Stronger(Candle candle, List<JudgedTest> valid, Catalogue catalogue)
    {
        if (valid.Count == 0)
        {
            yield break;
        }

        double tested = valid.Max(v => v.Test.OilShare.Value);
        foreach (Batch batch in catalogue.BatchesOf(candle))
        {
            if (
                RecipeMaker.FromBatch(batch, candle, catalogue, new Problems())?.Oils.Sum(o => o.Share.Value) is { } share
                && share > tested * (1 + MassPercent.RelativeTolerance)
            )
            {
                yield return $"Batch {batch.Code} has {FigureFormat.English.AtMost(new MassPercent(share))} of oil, tested were {Figures.Plain(tested)} %.";
            }
        }
    }

    private static IEnumerable<string> Changes(Candle candle, Test test, double? oilShare)
    {
        if (test.Vessel?.Id != candle.Vessel?.Id)
        {
            yield return $"the vessel is {candle.Vessel?.Id ?? "none"}, tested was {test.Vessel?.Id ?? "none"}";
        }

        if (test.Wax.Id != candle.Wax.Id)
        {
            yield return $"the wax is {candle.Wax.Id}, tested was {test.Wax.Id}";
        }

        if (test.WickCount != candle.Wicks.Count || test.WickKind != candle.Wicks.Kind)
        {
            yield return $"the wicks are {candle.Wicks.Count} x {candle.Wicks.Kind ?? "of no noted kind"}, tested were {test.WickCount} x {test.WickKind ?? "of no noted kind"}";
        }

        if (oilShare is null)
        {
            yield return "the share of oil cannot be reckoned";
        }
        else if (oilShare > test.OilShare.Value * (1 + MassPercent.RelativeTolerance))
        {
            yield return $"the candle has {FigureFormat.English.AtMost(new MassPercent(oilShare.Value))} of oil, tested were {Figures.Plain(test.OilShare.Value)} %";
        }
    }

    private static double? OilShare(Candle candle, Catalogue catalogue) =>
        RecipeMaker.FromPlan(candle, catalogue, new Problems())?.Oils.Sum(o => o.Share.Value);

    private static IEnumerable<string> WhatIsMissing(List<JudgedTest> valid, List<(JudgedTest, string Changed)> outdated, FileRules rules)
    {
        if (valid.Count == 0)
        {
            yield return outdated.Count == 0
                ? "No burn test is declared: burn it and write a file with 'declares: test'."
                : $"Test it again: {outdated[0].Changed}.";
            yield break;
        }

        JudgedTest newest = valid[0];
        if (newest.Verdict == TestVerdict.Failed)
        {
            yield return $"The newest test ({newest.Test.Id}) failed: {string.Join(", ", newest.Points.Where(p => p.Holds == false).Select(p => Called(p.Subject)))}. Change the candle and test it again.";
        }

        foreach (TestPoint open in newest.Points.Where(p => p.Holds is null))
        {
            yield return open.Limit.Length == 0
                ? $"{newest.Test.Id}: no limit of your own is set for {Called(open.Subject)}."
                : $"{newest.Test.Id}: {Called(open.Subject)} was not measured in every sample or burn.";
        }

        int samples = valid.Sum(v => v.Test.Samples.Count);
        if (samples < rules.FewestSamples)
        {
            yield return samples == 1
                ? $"1 sample was burnt; {rules.FewestSamples} are wanted."
                : $"{samples} samples were burnt; {rules.FewestSamples} are wanted.";
        }
    }

    /// <summary>What a subject is called inside a sentence.</summary>
    public static string Called(TestSubject subject) =>
        subject switch
        {
            TestSubject.Flame => "flame height",
            TestSubject.Heat => "temperature of the vessel",
            TestSubject.Soot => "soot",
            TestSubject.Slope => "falling on a slope",
            TestSubject.Vessel => "wholeness of the vessel",
            TestSubject.Relit => "lighting again by itself",
            _ => "end of life",
        };
}

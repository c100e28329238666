using Chandlery.Core.Declared;
using Chandlery.Core.SafetyFiles.Tests;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.SafetyFiles;

/// <summary>Burn tests are judged by the maker's own limits, and hold only for the candle that was tested.</summary>
public sealed class BurnTestTests
{
    private static CandleTests Of(MakersFolder folder, string candle = "slate-jar") =>
        CandleTests.Of(folder.Catalogue.OfKind<Candle>().Single(c => c.Id == candle), folder.Catalogue, TestLaw.Lawbook.Safety.File.Value);

    [Fact]
    public void A_tested_candle_is_done()
    {
        using var folder = new MakersFolder();
        CandleTests tests = Of(folder);
        Assert.True(tests.IsDone);
        Assert.Equal(TestVerdict.Passed, Assert.Single(tests.Valid).Verdict);
    }

    [Theory]
    [InlineData("candles/slate-jar.yaml", "kind: cotton with paper core", "kind: wood")]
    [InlineData("candles/slate-jar.yaml", "wicks: { count: 1", "wicks: { count: 2")]
    [InlineData("candles/slate-jar.yaml", "vessel: jar-300", "vessel: tin-100")]
    [InlineData("candles/slate-jar.yaml", "wax: soy-flake", "wax: paraffin-55")]
    [InlineData("candles/slate-jar.yaml", "percent: 6, of: candle", "percent: 6.1, of: candle")]
    public void A_changed_candle_is_tested_again(string file, string from, string to)
    {
        using var folder = new MakersFolder();
        folder.Change(file, from, to);
        CandleTests tests = Of(folder);
        Assert.Empty(tests.Valid);
        Assert.StartsWith("Test it again: ", Assert.Single(tests.Missing), StringComparison.Ordinal);
    }

    [Fact]
    public void Less_oil_needs_no_new_test()
    {
        using var folder = new MakersFolder();
        folder.Change("candles/slate-jar.yaml", "percent: 6, of: candle", "percent: 5, of: candle");
        Assert.True(Of(folder).IsDone);
    }

    [Theory]
    [InlineData("flameMm: 34", "flameMm: 46", TestSubject.Flame)]
    [InlineData("vesselCelsius: 59", "vesselCelsius: 65.5", TestSubject.Heat)]
    [InlineData("soot: little, relit: no }\n    fellOnSlope: no", "soot: much, relit: no }\n    fellOnSlope: no", TestSubject.Soot)]
    [InlineData("vesselWhole: yes", "vesselWhole: no", TestSubject.Vessel)]
    [InlineData("soot: nothing, relit: no", "soot: nothing, relit: yes", TestSubject.Relit)]
    [InlineData("fellOnSlope: no", "fellOnSlope: yes", TestSubject.Slope)]
    [InlineData("wentOut: yes", "wentOut: no", TestSubject.End)]
    public void A_broken_limit_fails(string from, string to, TestSubject subject)
    {
        using var folder = new MakersFolder();
        folder.Change("tests/slate-jar-26-10.yaml", from, to);
        JudgedTest judged = Assert.Single(Of(folder).Valid);
        Assert.Equal(TestVerdict.Failed, judged.Verdict);
        Assert.False(judged.Points.Single(p => p.Subject == subject).Holds);
        Assert.False(Of(folder).IsDone);
    }

    [Fact]
    public void What_stands_by_itself_is_tested_without_a_vessel()
    {
        using var folder = new MakersFolder();
        JudgedTest judged = Assert.Single(Of(folder, "breakwater-pillar").Valid);
        Assert.Equal(TestVerdict.Passed, judged.Verdict);
        Assert.DoesNotContain(judged.Points, p => p.Subject is TestSubject.Vessel or TestSubject.Heat);
        Assert.True(Of(folder, "breakwater-pillar").IsDone);
        folder.Change("tests/pillar-26-10.yaml", "wax: paraffin-55", "vessel: jar-300\nwax: paraffin-55");
        Assert.StartsWith(
            "Test it again: the vessel is none, tested was jar-300",
            Assert.Single(Of(folder, "breakwater-pillar").Missing),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Every_candle_of_the_demo_that_burns_is_tested_as_it_is()
    {
        using var folder = new MakersFolder();
        Candle[] burning = [.. folder.Catalogue.OfKind<Candle>().Where(c => c.Wicks.Count > 0)];
        Assert.Equal(8, burning.Length);
        Assert.All(burning, c => Assert.Empty(Of(folder, c.Id).Missing));
    }

    [Fact]
    public void A_batch_with_more_oil_than_was_tested_is_said()
    {
        using var folder = new MakersFolder();
        Assert.Empty(Of(folder, "harbour-bowl").Missing);
        folder.Change("tests/bowl-26-10.yaml", "oilPercent: 6.7", "oilPercent: 6.55");
        Assert.Equal("Batch HB-2611-02 has 6.61 % of oil, tested were 6.55 %.", Assert.Single(Of(folder, "harbour-bowl").Missing));
    }

    [Fact]
    public void What_was_not_measured_or_has_no_limit_is_never_said_to_hold()
    {
        using var folder = new MakersFolder();
        folder.Change("tests/slate-jar-26-10.yaml", "flameMm: 24, ", "").Change("tests/slate-jar-26-10.yaml", ", slopeDegrees: 8", "");
        JudgedTest judged = Assert.Single(Of(folder).Valid);
        Assert.Equal(TestVerdict.Incomplete, judged.Verdict);
        Assert.Null(judged.Points.Single(p => p.Subject == TestSubject.Flame).Holds);
        Assert.Null(judged.Points.Single(p => p.Subject == TestSubject.Slope).Holds);
        Assert.Equal(2, Of(folder).Missing.Count);
    }
}

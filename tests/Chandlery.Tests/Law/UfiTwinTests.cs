using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Files;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Law;

/// <summary>One UFI stands for one composition.</summary>
public sealed class UfiTwinTests
{
    private const string Words = "the same UFI, but another composition";

    [Theory]
    [InlineData("percent: 6", true)]
    [InlineData("percent: 5", false)]
    [Outside("CLP Annex VIII, Part A, 5: a UFI identifies one composition")]
    public void One_number_on_two_compositions_stops_both(string twinLoad, bool stops)
    {
        var problems = new Problems();
        const string oil =
            "declares: oil\nname: Mystery\nsupplier: Nobody\ndocument: SDS 1\nrevised: 2026-01-01\nclasses: [\"Skin Sens. 1, H317\"]\ningredients: []";
        string jar = File.ReadAllText(Path.Combine(TestLaw.DemoFolder, "candles", "slate-jar.yaml"))
            .Replace("oil: rain-on-slate", "oil: mystery", StringComparison.Ordinal)
            .Replace("percent: 6", "percent: 5", StringComparison.Ordinal)
            .Replace("gtin: \"2012345678903\"", "formulationNumber: 7", StringComparison.Ordinal);
        string twin = jar.Replace("percent: 5", twinLoad, StringComparison.Ordinal)
            .Replace("Slate Jar", "Twin Jar", StringComparison.Ordinal);
        (string, string)[] files =
        [
            ("mystery.yaml", oil),
            ("one.yaml", jar),
            ("two.yaml", twin),
            .. Directory.EnumerateFiles(TestLaw.DemoFolder, "*.yaml", SearchOption.AllDirectories).Select(f => (f, File.ReadAllText(f))),
        ];
        Catalogue catalogue = TestLaw.Read(problems, files);
        var assessor = new Assessor(TestLaw.Lawbook, catalogue, TestLaw.Today);
        foreach (string id in new[] { "one", "two" })
        {
            Assessment a = assessor.Assess(catalogue.OfKind<Candle>().Single(c => c.Id == id), "IE", problems).Single();
            Assert.Equal(stops, a.Findings.Any(f => f.Gravity == Gravity.Stop && f.What.Contains(Words, StringComparison.Ordinal)));
        }

        Assert.Empty(problems.Found);
    }

    [Fact]
    [Outside("CLP Annex VIII, Part A, 5: a UFI identifies one composition")]
    public void A_folder_whose_candles_are_read_one_by_one_says_it_too()
    {
        using var folder = new MakersFolder();
        folder.Write(
            "candles/twin.yaml",
            folder
                .Read("candles/harbour-bowl.yaml")
                .Replace("percent: 8", "percent: 7", StringComparison.Ordinal)
                .Replace("Harbour Bowl", "Twin Bowl", StringComparison.Ordinal)
        );
        FolderEntries<(string Id, bool Stops)> run = FolderRun.Assess(
            folder.Path,
            TestLaw.Lawbook,
            TestLaw.Today,
            "IE",
            a => (a.Id, a.StopsSale)
        );
        Assert.Equal(
            ["harbour-bowl", "twin"],
            run.Entries.SelectMany(e => e.Results).Where(r => r.Stops && r.Id != "hb-2611").Select(r => r.Id).Order(StringComparer.Ordinal)
        );
    }
}

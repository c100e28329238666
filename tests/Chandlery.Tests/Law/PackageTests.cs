using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Judged;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Law;

/// <summary>What the package itself must have or bear.</summary>
public sealed class PackageTests
{
    private const string Closure = "child-resistant fastening";
    private const string Tactile = "a warning of danger that can be felt";

    /// <summary>The demo's jar with another oil, and its files changed.</summary>
    private static Assessment Jar(string classes, DateOnly? on = null, string place = "IE", params (string From, string To)[] changes)
    {
        var problems = new Problems();
        string oil =
            $"declares: oil\nname: Mystery\nsupplier: Nobody\ndocument: SDS 1\nrevised: 2026-01-01\nclasses: [{classes}]\ningredients: []";
        (string From, string To)[] all = [("{ oil: rain-on-slate, share: 100 }", "{ oil: mystery, share: 100 }"), .. changes];
        (string, string)[] files =
        [
            ("mystery.yaml", oil),
            .. Directory
                .EnumerateFiles(TestLaw.DemoFolder, "*.yaml", SearchOption.AllDirectories)
                .Select(f => (f, all.Aggregate(File.ReadAllText(f), (t, c) => t.Replace(c.From, c.To, StringComparison.Ordinal)))),
        ];
        Catalogue catalogue = TestLaw.Read(problems, files);
        Candle jar = catalogue.OfKind<Candle>().Single(c => c.Id == "slate-jar");
        Assessment a = new Assessor(TestLaw.Lawbook, catalogue, on ?? TestLaw.Today)
            .Assess(jar with { FormulationNumber = 3 }, place, problems)
            .Single();
        Assert.Empty(problems.Found);
        return a;
    }

    private static bool Stops(Assessment a, string words) =>
        a.Findings.Any(f => f.Gravity == Gravity.Stop && f.What.Contains(words, StringComparison.Ordinal));

    [Theory]
    [InlineData("\"Skin Corr. 1B, H314\"", true, true)]
    [InlineData("\"STOT RE 1, H372\", \"STOT SE 1, H370\"", false, true)] // 6 % of the candle: category 2
    [InlineData("\"Resp. Sens. 1, H334\"", false, true)]
    [InlineData("\"Carc. 2, H351\"", false, true)]
    [InlineData("\"Skin Sens. 1, H317\", \"Eye Dam. 1, H318\", \"Aquatic Chronic 1, H410\"", false, false)]
    [Outside("CLP Annex II, 3.1.1.1 and 3.2.1, consolidated text of 1 May 2026")]
    public void Fastening_and_tactile_warning_are_due_by_class(string classes, bool closure, bool tactile)
    {
        Assessment a = Jar(classes);
        Assert.Equal(closure, Stops(a, Closure));
        Assert.Equal(tactile, Stops(a, Tactile));
    }

    [Fact]
    public void A_vessel_that_has_both_stops_nothing()
    {
        Assessment a = Jar(
            "\"Skin Corr. 1B, H314\"",
            null,
            "IE",
            ("material: glass\nbrimfulMl", "material: glass\nchildResistant: yes\ntactileWarning: yes\nbrimfulMl")
        );
        Assert.False(Stops(a, Closure) || Stops(a, Tactile));
    }

    [Fact]
    public void Great_Britain_asks_the_same_and_cites_its_own_law()
    {
        Finding closure = Jar("\"Skin Corr. 1B, H314\"", null, "GB")
            .Findings.Single(f => f.What.Contains(Closure, StringComparison.Ordinal));
        Assert.Equal("GB CLP Art. 35(2) and Annex II, 3.1.1.1", closure.Clause.Text);
    }

    [Theory]
    [InlineData(125, 100, true)]
    [InlineData(126, 100, false)]
    [InlineData(125, 210, false)] // 210 g of this wax take 231 ml, whatever the fill line says
    [Outside("CLP Annex I, 1.5.2.1: contents not exceeding 125 ml, consolidated text of 1 May 2026")]
    public void The_contents_decide_on_a_small_package_not_the_capacity(int fillMl, int netGrams, bool relief)
    {
        Assessment a = Jar(
            "\"Aquatic Chronic 1, H410\"",
            null,
            "IE",
            ("fillMl: 280", $"fillMl: {fillMl}"),
            ("netGrams: 210", $"netGrams: {netGrams}")
        );
        Assert.True(a.Vessel.Brimful.Value > 300);
        Assert.Equal(relief, a.SmallPackageRelief.Any(r => r.Code.Text == "H411"));
    }

    [Theory]
    [InlineData("2026-06-30", false)]
    [InlineData("2026-07-01", true)]
    [Outside("CLP Annex I, 1.5.1.2, before and after Regulation (EU) 2024/2865 (1 July 2026 by Regulation (EU) 2025/2439)")]
    public void A_vessel_under_a_tag_bears_the_signal_word_from_a_day_on(string on, bool signalWord)
    {
        InnerPackage inner = Inner(on, 300, LabelPlace.OnTag, "Eye Irrit. 2, H319")!;
        Assert.Equal(signalWord, inner.Bears.Contains(InnerElement.SignalWord));
        Assert.Equal(["GHS07"], inner.Pictograms.Select(p => p.Code));
    }

    [Theory]
    [InlineData("2026-07-01", 10, LabelPlace.OnVessel, "Skin Sens. 1, H317", true)]
    [InlineData("2026-06-30", 10, LabelPlace.OnVessel, "Skin Sens. 1, H317", false)]
    [InlineData("2026-07-01", 10.1, LabelPlace.OnVessel, "Skin Sens. 1, H317", false)]
    [InlineData("2026-07-01", 10, LabelPlace.OnVessel, "Eye Dam. 1, H318", false)]
    [InlineData("2026-07-01", 10, LabelPlace.OnVessel, "Aquatic Chronic 1, H410", true)]
    [Outside("CLP Annex I, 1.5.2.4.1, as replaced by Regulation (EU) 2024/2865, Annex I, point 10")]
    public void A_package_of_ten_millilitres_may_leave_all_off(string on, double ml, LabelPlace place, string claim, bool may)
    {
        InnerPackage? inner = Inner(on, ml, place, claim);
        Assert.Equal(may, inner is not null);
        Assert.Equal(may, inner?.Bears.SequenceEqual([InnerElement.ProductName, InnerElement.Pictograms]) ?? false);
    }

    [Fact]
    [Outside("CLP Annex I, 1.5.2.4.1(c): with a statement of Annex II only inside a labelled outer package")]
    public void A_statement_on_sensitisers_asks_for_an_outer_package()
    {
        Verdict verdict = TestLaw.Law(day: new DateOnly(2026, 7, 1)).Judge(TestLaw.Mixture(TestLaw.Line("a", 0.2, ["Skin Sens. 1, H317"])));
        Assert.Null(Inner(verdict, 10, LabelPlace.OnVessel));
        Assert.NotNull(Inner(verdict, 10, LabelPlace.OnOuterPackage));
    }

    private static InnerPackage? Inner(string on, double ml, LabelPlace place, string claim) =>
        Inner(
            TestLaw.Law(day: DateOnly.ParseExact(on, "yyyy-MM-dd")).Judge(TestLaw.Mixture(TestLaw.Line("a", 40, [claim], m: 1))),
            ml,
            place
        );

    private static InnerPackage? Inner(Verdict v, double ml, LabelPlace place) =>
        InnerPackages.Of(v.Law.Edition.SmallPackages, v.Law.Day, v.Classification, v.Label, new Millilitres(ml), place);
}

using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Assessed;
using Chandlery.Core.Classified;
using Chandlery.Core.Declared;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Law;

public class OtherClassesTests
{
    private static string CodesOn(string edition, DateOnly day, DateOnly? since, params Ingredient[] lines)
    {
        Chandlery.Core.Composed.Composition c = Bench.Mixture(lines);
        return string.Join(
            ", ",
            Bench.Law(Bench.Lawbook.Edition(edition), day, since).Judge(c).Classification.Classes.Select(x => x.Category.Code)
        );
    }

    [Outside("CLP Annex I, Tables 3.8.3 and 3.9.4 (from memory), 3.8.3.4.5 (20 %, from memory), 5.1.3 (from memory)")]
    [Theory]
    [InlineData("STOT SE 1, H370", 10, "STOT SE 1")]
    [InlineData("STOT SE 1, H370", 9.99, "STOT SE 2")]
    [InlineData("STOT SE 1, H370", 1, "STOT SE 2")]
    [InlineData("STOT SE 1, H370", 0.99, "")]
    [InlineData("STOT SE 2, H371", 10, "STOT SE 2")]
    [InlineData("STOT SE 2, H371", 9.99, "")]
    [InlineData("STOT RE 1, H372", 10, "STOT RE 1")]
    [InlineData("STOT RE 1, H372", 1, "STOT RE 2")]
    [InlineData("STOT RE 2, H373", 10, "STOT RE 2")]
    [InlineData("STOT RE 2, H373", 9.99, "")]
    [InlineData("STOT SE 3, H335", 20, "STOT SE 3 (respiratory irritation)")]
    [InlineData("STOT SE 3, H335", 19.9, "")]
    [InlineData("STOT SE 3, H336", 20, "STOT SE 3 (narcotic effects)")]
    [InlineData("Ozone 1, H420", 0.1, "Ozone 1")]
    [InlineData("Ozone 1, H420", 0.099, "")]
    public void TargetOrgansAndOzone(string hazard, double percent, string expected) =>
        Assert.Equal(expected, Bench.Codes(Bench.Line("a", percent, [hazard])));

    [Fact]
    public void RespiratoryAndNarcoticEffectsAreAddedApart() =>
        Assert.Equal("", Bench.Codes(Bench.Line("a", 15, ["STOT SE 3, H335"]), Bench.Line("b", 15, ["STOT SE 3, H336"])));

    [Outside("Delegated Regulation (EU) 2023/707: limits 0.1 % and 1 % (ED HH verified, the others from memory)")]
    [Theory]
    [InlineData("ED HH 1, EUH380", 0.1, "ED HH 1")]
    [InlineData("ED HH 1, EUH380", 0.099, "")]
    [InlineData("ED HH 2, EUH381", 1, "ED HH 2")]
    [InlineData("ED HH 2, EUH381", 0.99, "")]
    [InlineData("ED ENV 1, EUH430", 0.1, "ED ENV 1")]
    [InlineData("ED ENV 2, EUH431", 1, "ED ENV 2")]
    [InlineData("PBT, EUH440", 0.1, "PBT")]
    [InlineData("PBT, EUH440", 0.099, "")]
    [InlineData("vPvB, EUH441", 0.1, "vPvB")]
    [InlineData("PMT, EUH450", 0.1, "PMT")]
    [InlineData("vPvM, EUH451", 0.1, "vPvM")]
    public void TheNewClasses(string hazard, double percent, string expected) =>
        Assert.Equal(expected, Bench.Codes(Bench.Line("a", percent, [hazard])));

    [Outside("Delegated Regulation (EU) 2023/707: new mixtures from 1 May 2026, all mixtures from 1 May 2028")]
    [Theory]
    [InlineData("2026-04-30", null, "")]
    [InlineData("2026-05-01", null, "ED HH 1")]
    [InlineData("2026-05-01", "2025-01-01", "")]
    [InlineData("2028-04-30", "2025-01-01", "")]
    [InlineData("2028-05-01", "2025-01-01", "ED HH 1")]
    [InlineData("2027-01-01", "2026-06-01", "ED HH 1")]
    public void TheNewClassesHaveTheirDates(string day, string? since, string expected) =>
        Assert.Equal(
            expected,
            CodesOn(
                "eu-clp",
                DateOnly.Parse(day, System.Globalization.CultureInfo.InvariantCulture),
                since is null ? null : DateOnly.Parse(since, System.Globalization.CultureInfo.InvariantCulture),
                Bench.Line("a", 1, ["ED HH 1, EUH380"])
            )
        );

    [Outside("HSE notices: the classes of 2023/707 are no part of GB CLP; Northern Ireland follows the Union")]
    [Theory]
    [InlineData("gb-clp", "")]
    [InlineData("northern-ireland", "ED HH 1")]
    [InlineData("un-ghs", "")]
    public void TheNewClassesByEdition(string edition, string expected) =>
        Assert.Equal(expected, CodesOn(edition, Bench.Today, null, Bench.Line("a", 1, ["ED HH 1, EUH380"])));

    [Outside("OSHA, 29 CFR 1910.1200 (GHS revision 7), letter of 4 March 2014 on STOT; other limits from memory")]
    [Theory]
    [InlineData("Skin Sens. 1, H317", 0.1, "Skin Sens. 1")]
    [InlineData("Skin Sens. 1B, H317", 0.99, "")]
    [InlineData("Skin Sens. 1B, H317", 1, "Skin Sens. 1B")]
    [InlineData("STOT RE 1, H372", 1, "STOT RE 1")]
    [InlineData("STOT RE 2, H373", 1, "STOT RE 2")]
    [InlineData("STOT RE 2, H373", 0.99, "")]
    [InlineData("Carc. 2, H351", 0.1, "Carc. 2")]
    [InlineData("Repr. 2, H361d", 0.1, "Repr. 2")]
    [InlineData("Aquatic Chronic 1, H410", 50, "")]
    public void TheUnitedStatesWorkplace(string hazard, double percent, string expected) =>
        Assert.Equal(expected, CodesOn("united-states", Bench.Today, null, Bench.Line("a", percent, [hazard], m: 1)));

    [Outside("UN GHS revision 10: categories beyond CLP (from memory)")]
    [Theory]
    [InlineData("Skin Irrit. 2, H315", 1, "Skin Irrit. 3")]
    [InlineData("Skin Irrit. 2, H315", 10, "Skin Irrit. 2")]
    [InlineData("Skin Irrit. 3, H316", 10, "Skin Irrit. 3")]
    [InlineData("Eye Irrit. 2, H319", 10, "Eye Irrit. 2A")]
    [InlineData("Aquatic Acute 1, H400", 2.5, "Aquatic Acute 2")]
    [InlineData("Aquatic Acute 1, H400", 0.25, "Aquatic Acute 3")]
    [InlineData("Aquatic Acute 2, H401", 25, "Aquatic Acute 2")]
    public void TheBaseForOtherCountries(string hazard, double percent, string expected) =>
        Assert.Equal(expected, CodesOn("un-ghs", Bench.Today, null, Bench.Line("a", percent, [hazard], m: 1)));

    [Fact]
    public void AspirationIsExplainedNotComputed()
    {
        Assessment a = Bench.Demo("candles/harbour-bowl.yaml");
        Assert.Contains(
            a.Unassessed,
            u => u.Contains("Asp. Tox. 1", StringComparison.Ordinal) && u.Contains("3.10.3.3.1", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void AMissingMFactorIsSaidAndCountsAsOne()
    {
        Ingredient line = Bench.Line("a", 30, ["Aquatic Acute 1, H400"]);
        Assert.Equal("Aquatic Acute 1", Bench.Codes(line));
        Assert.Contains(
            OpenQuestions.Unassessed(Bench.Eu, Bench.Substances(Bench.Mixture(line)), MassPercent.Zero),
            u => u.Contains("M-factor", StringComparison.Ordinal)
        );
    }

    [Outside("CLP Annex I, 3.2.3.3.4, Table 3.2.4: phenols and aldehydes may not add up (1 % and 3 %)")]
    [Theory]
    [InlineData("Thymol", "Skin Corr. 1B, H314", 1, "other method would give Skin Corr. 1")]
    [InlineData("Cinnamaldehyde", "Skin Irrit. 2, H315", 3, "other method would give Skin Irrit. 2")]
    [InlineData("Cinnamaldehyde", "Skin Irrit. 2, H315", 2.9, "other method would give no class")]
    public void NonAdditiveSubstancesAreReportedNotSwitched(string name, string hazard, double percent, string expected)
    {
        Ingredient line = Bench.Line(name, percent, [hazard]);
        Classification c = Bench.Classify(line);
        Assert.DoesNotContain(c.Classes, x => x.Category.Code is "Skin Corr. 1");
        string said = string.Join(" ", Bench.Judge(line).WhereAddingMayFail().Select(q => q.What));
        Assert.Contains(expected, said, StringComparison.Ordinal);
        Assert.Contains(name, said, StringComparison.Ordinal);
    }

    [Outside("CLP Annex I, 1.5.2.1 (law text in two languages): what may go from a package of up to 125 ml")]
    [Theory]
    [InlineData("Skin Irrit. 2, H315", 20, 125, "H315 P264 P280 P302+P352 P332+P313 P362+P364")]
    [InlineData("Skin Irrit. 2, H315", 20, 126, "")]
    [InlineData("Aquatic Chronic 3, H412", 30, 125, "P273 P501")]
    [InlineData("Aquatic Chronic 2, H411", 30, 125, "H411 P273 P391 P501")]
    [InlineData("Skin Sens. 1B, H317", 5, 125, "")]
    [InlineData("Acute Tox. 4, H302", 50, 125, "")]
    [InlineData("Eye Dam. 1, H318", 5, 125, "")]
    public void SmallPackages(string hazard, double percent, double millilitres, string expected)
    {
        Classification c = Bench.Classify(Bench.Line("a", percent, [hazard]));
        LabelElements label = LabelSelector.Select(Bench.Eu, c);
        IEnumerable<string> gone = Chandlery
            .Core.Labelled.SmallPackages.MayLeaveOff(Bench.Eu, c, label, new Millilitres(millilitres))
            .Select(g => g.Code.Text)
            .Where(g => g != "P102");
        Assert.Equal(expected, string.Join(" ", gone));
    }

    [Fact]
    public void APrecautionStaysWhileOneClassMustKeepIt()
    {
        Classification c = Bench.Classify(Bench.Line("a", 20, ["Skin Irrit. 2, H315", "Skin Sens. 1B, H317"]));
        LabelElements label = LabelSelector.Select(Bench.Eu, c);
        string[] gone =
        [
            .. Chandlery.Core.Labelled.SmallPackages.MayLeaveOff(Bench.Eu, c, label, new Millilitres(100)).Select(g => g.Code.Text),
        ];
        Assert.Contains("H315", gone);
        Assert.DoesNotContain("H317", gone);
        Assert.DoesNotContain("P302+P352", gone);
    }

    [Outside("Regulation (EU) 2025/2439: the label format of 2024/2865 binds from 1 January 2028; the agreement of June 2026 is not law")]
    [Fact]
    public void TheNextChangeOfTheLawIsKnownApartFromExpectation()
    {
        Assessment tin = Bench.Demo("candles/fig-tin.yaml");
        Assert.Equal(new DateOnly(2028, 1, 1), tin.NextLaw!.On);
        Assert.Equal(LegalStatus.Expected, tin.NextExpected!.Status);
        Assert.Equal(new DateOnly(2030, 1, 1), tin.NextExpected.On);
        Assert.Contains("0.9 mm", tin.NextExpected.What[0], StringComparison.Ordinal);

        // What is expected is never applied.
        Assert.Equal("table-1.3-of-2024-2865", Bench.Eu.Formats.On(new DateOnly(2031, 1, 1)).Id);
    }

    [Fact]
    public void AnOilKnownOnlyByItsOwnClassesIsWeakerEvidence()
    {
        var problems = new Problems();
        const string oil =
            "declares: oil\nname: Mystery\nsupplier: Nobody\ndocument: SDS 1\nrevised: 2026-01-01\nclasses: [\"Skin Sens. 1, H317\"]\ningredients: []";
        string folder = Bench.DemoFolder;
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
        Catalogue catalogue = Bench.Read(problems, files);
        Candle jar = catalogue.OfKind<Candle>().Single(c => c.Id == "slate-jar");
        Assessment a = new Assessor(Bench.Lawbook, catalogue, Bench.Today)
            .Assess(jar with { FormulationNumber = 3 }, "IE", problems)
            .Single();
        Assert.Empty(problems.Found);
        Assert.Equal("Skin Sens. 1", a.Classification.Classes.Single().Category.Code);
        Assert.Contains(a.Unassessed, u => u.Contains("weaker evidence", StringComparison.Ordinal));
    }

    [Fact]
    public void AContradictionBetweenAnOilsClassesAndItsIngredientsIsReported() =>
        Assert.Contains(
            Bench.Demo("candles/harbour-bowl.yaml").Findings,
            f => f.What.StartsWith("Sweet Orange Essential Oil: its sheet says nothing for aquatic, acute", StringComparison.Ordinal)
        );

    [Outside("CLP Art. 45 and Annex VIII: a UFI for hazards to health, none for the environment alone (from memory)")]
    [Fact]
    public void AUfiIsAskedForWhereHealthIsAtStake()
    {
        Assert.NotNull(Bench.Demo("candles/harbour-bowl.yaml").Ufi);
        Assert.Null(Bench.Demo("candles/fig-tin.yaml").Ufi);
        Assert.Null(Bench.Demo("candles/harbour-bowl.yaml", "GB").Ufi);
        Assert.NotNull(Bench.Demo("candles/harbour-bowl.yaml", "NI").Ufi);
    }

    [Fact]
    public void AtLeastSixtySubstancesHaveHarmonisedClasses()
    {
        Assert.True(Bench.Lawbook.Substances.Entries.Count(e => e.Claims is not null) >= 60);
        Assert.All(Bench.Lawbook.Substances.Entries, e => Assert.NotEmpty(e.Confidence));
        string[] twice =
        [
            .. Bench.Lawbook.Substances.Entries.SelectMany(e => e.CasNumbers).GroupBy(c => c).Where(g => g.Count() > 1).Select(g => g.Key),
        ];
        Assert.Empty(twice);
    }
}

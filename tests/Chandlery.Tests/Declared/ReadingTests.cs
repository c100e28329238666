using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Declared;

public class ReadingTests
{
    private const string Oil = """
        declares: oil
        name: Test Oil
        supplier: Nobody
        document: SDS 1
        revised: 2026-01-31
        ingredients:
          - { name: Linalool, cas: 78-70-6, share: 10 - <25 %, classes: ["Skin Sens. 1B, H317"] }
        """;

    private static Problem Single(string text, string file = "oil.yaml")
    {
        var problems = new Problems();
        TestLaw.Read(problems, (file, text));
        return Assert.Single(problems.Found);
    }

    [Fact]
    public void AGoodOilIsRead()
    {
        var problems = new Problems();
        Oil oil = TestLaw.Read(problems, ("oil.yaml", Oil)).OfKind<Oil>().Single();
        Assert.Empty(problems.Found);
        Assert.Equal("Skin Sens. 1B", oil.Ingredients[0].Claims![0].Category.Code);
    }

    [Theory]
    [InlineData("78-70-6", "78-70-5", 7, "check digit")]
    [InlineData("Skin Sens. 1B, H317", "Skin Sens. 1B, H315", 7, "H315 does not belong to Skin Sens. 1B")]
    [InlineData("Skin Sens. 1B, H317", "Skin Sans. 1B", 7, "Did you mean 'Skin Sens. 1B'")]
    [InlineData("Skin Sens. 1B, H317", "Acute Tox. 4", 7, "H302 (oral), H312 (dermal), H332 (inhalation)")]
    [InlineData("10 - <25 %", "25 - 10 %", 7, "runs backwards")]
    [InlineData("2026-01-31", "31.1.2026", 5, "is not a day")]
    [InlineData("supplier:", "suplier:", 3, "Did you mean 'supplier'")]
    [InlineData("declares: oil", "declares: oill", 1, "Did you mean 'oil'")]
    [InlineData("name: Test Oil", "name: &a Test Oil", 2, "anchors and aliases")]
    [InlineData("name: Test Oil", "name: !!str Test Oil", 2, "tags")]
    [InlineData("name: Test Oil", "name: [Test Oil]", 2, "'name' must be a text")]
    [InlineData("share: 10 - <25 %", "share: [1, 2]", 7, "'share' must be a text")]
    public void AMistakeIsShownWithItsPlace(string right, string wrong, int line, string expected)
    {
        var problems = new Problems();
        TestLaw.Read(problems, ("oil.yaml", Oil.Replace(right, wrong, StringComparison.Ordinal)));
        Assert.Contains(
            problems.Found,
            p =>
                p.ToString().Contains(expected, StringComparison.Ordinal)
                && p.Place.Line == line
                && p.Place.Column > 0
                && p.Place.File == "oil.yaml"
        );
    }

    [Fact]
    public void AllMistakesOfAFileAreShownAtOnce()
    {
        var problems = new Problems();
        TestLaw.Read(
            problems,
            (
                "oil.yaml",
                Oil.Replace("78-70-6", "78-70-5", StringComparison.Ordinal).Replace("2026-01-31", "soon", StringComparison.Ordinal)
            )
        );
        Assert.Equal(2, problems.Found.Count);
    }

    [Fact]
    public void AFieldThatStandsTwiceIsRefused() =>
        Assert.Contains("stands here twice", Single(Oil + "\nname: Other").What, StringComparison.Ordinal);

    [Fact]
    public void ATabIsExplained() =>
        Assert.Contains("indent with spaces", Single("declares: oil\n\tname: x").Remedy, StringComparison.Ordinal);

    [Fact]
    public void SharesThatAddUpToMoreThanTheWholeAreRefused() =>
        Assert.Contains(
            "add up to 120 %",
            Single(
                Oil.Replace("10 - <25 %", "60", StringComparison.Ordinal) + "\n  - { name: Other, share: 60, classes: not classified }"
            ).What,
            StringComparison.Ordinal
        );

    [Fact]
    public void DeepNestingIsRefused()
    {
        string deep = "declares: oil\nname: " + new string('[', 40) + new string(']', 40);
        Assert.Contains("nested more than", Single(deep).What, StringComparison.Ordinal);
    }

    private static string Candle(string load) =>
        $"""
            declares: candle
            name: Test
            use: indoor
            vessel: jar
            netGrams: 100
            wax: soy
            {load}
            oils: [ {"{ oil: oil, share: 100 }"} ]
            wicks: {"{ count: 1, trimToMm: 5 }"}
            soldIn: [IE]
            """;

    [Fact]
    public void ABareLoadIsExplainedInBothMeanings()
    {
        Problem problem = Single(Candle("load: 10"), "candle.yaml");
        Assert.Equal(7, problem.Place.Line);
        Assert.Contains("10 % of the wax is 9.091 % of the candle", problem.What, StringComparison.Ordinal);
        Assert.Contains("10 % of the candle is 11.11 % of the wax", problem.What, StringComparison.Ordinal);
        Assert.Contains("load: { percent: 10, of: wax }", problem.Remedy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("load: { percent: 10 }", "'of' is missing")]
    [InlineData("load: { percent: -3, of: wax }", "must be 0 or more")]
    [InlineData("load: { percent: '10,5', of: wax }", "must be a number")]
    [InlineData("load: { percent: .inf, of: wax }", "must be a number")]
    [InlineData("load: { percent: .nan, of: wax }", "must be a number")]
    [InlineData("load: { percent: 10, of: oil }", "is not known")]
    [InlineData("batchCode: x", "The fragrance load is missing")]
    public void AWrongLoadIsRefused(string load, string expected) =>
        Assert.Contains(expected, Single(Candle(load), "candle.yaml").What, StringComparison.Ordinal);

    [Theory]
    [InlineData("Skin Sens. 1B, H317", "Skin Sens. 1B", "H317")]
    [InlineData("Skin Sens. 1B - H317", "Skin Sens. 1B", "H317")]
    [InlineData("Acute Tox. 4 * ; H302", "Acute Tox. 4 (oral)", "H302")]
    [InlineData("acute tox 4 H332", "Acute Tox. 4 (inhalation)", "H332")]
    [InlineData("STOT SE 3; H336", "STOT SE 3 (narcotic effects)", "H336")]
    [InlineData("Repr. 1B (H360Fd)", "Repr. 1B", "H360Fd")]
    [InlineData("Aquatic Chronic 2", "Aquatic Chronic 2", "H411")]
    [InlineData("Lact., H362", "Lact.", "H362")]
    public void ClassesAreReadAsSheetsPrintThem(string text, string code, string statement)
    {
        HazardClaim claim = TestLaw.Claim(text);
        Assert.Equal(code, claim.Category.Code);
        Assert.Equal(statement, claim.Statement);
    }

    [Fact]
    public void A_comma_for_a_decimal_point_in_braces_is_told_as_what_it_is()
    {
        var problems = new Problems();
        TestLaw.Read(problems, ("w.yaml", "declares: wax\nname: W\nsupplier: S\nhighestLoad: { percent: 7,5, of: wax }\n"));
        Assert.Contains(problems.Found, p => p.Remedy.Contains("7.5", StringComparison.Ordinal));
    }
}

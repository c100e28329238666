using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Notified;
using Chandlery.Tests.Sheets;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Law;

/// <summary>What a notification to the poison centres says besides the bands of the ingredients.</summary>
public sealed class NotificationTests
{
    private const string Mixture = "CLP Annex VIII, Part B, 3.2.2, consolidated text of 1 May 2026";

    // A published UFI: the format's own example for this VAT number and formulation number.
    private const string PublishedUfi = "C23S-PQ2V-AMH9-VVRF";

    private static readonly (string, string)[] Around =
    [
        ("maker.yaml", Text("maker.yaml")),
        ("jar.yaml", Text("vessels", "jar-300.yaml")),
        ("tin.yaml", Text("vessels", "tin-100.yaml")),
        ("wax.yaml", Text("waxes", "paraffin-55.yaml")),
        (
            "chip.yaml",
            "declares: extra\nname: Grey Chip\nsupplier: Nobody\npurpose: dye\ningredients:\n  - { name: Grey pigment, share: \"100\", classes: not classified }"
        ),
    ];

    private static string Text(params string[] path) => File.ReadAllText(Path.Combine([TestLaw.DemoFolder, .. path]));

    // A sensitiser makes the notification due; the rest of the oil is what each test is about.
    private static string Oil(string name, string rest, string more = "") =>
        $"declares: oil\nname: {name}\nsupplier: Nobody\ndocument: SDS 1\nrevised: 2026-01-01\ningredients:\n"
        + "  - { name: Tingle, share: \"20\", classes: [\"Skin Sens. 1, H317\"] }\n"
        + rest
        + "\n"
        + more;

    private static string Plain(double percent) =>
        FormattableString.Invariant($"  - {{ name: Breeze, share: \"{percent}\", classes: not classified }}");

    private static string Candle(string name, string oil, double load, long number, string more = "") =>
        FormattableString.Invariant(
            $"declares: candle\nname: {name}\nuse: indoor\nvessel: jar\nnetGrams: 210\nwax: wax\nload: {{ percent: {load}, of: candle }}\noils: [{{ oil: {oil}, share: 100 }}]\nwicks: {{ count: 1, trimToMm: 5 }}\nsoldIn: [IE, LU]\nformulationNumber: {number}\n{more}"
        );

    private static Assessment Assess(params (string, string)[] files)
    {
        var problems = new Problems();
        Catalogue catalogue = TestLaw.Read(problems, [.. Around, .. files]);
        Candle candle = catalogue.OfKind<Candle>().Single(c => c.Id == "one");
        Assessment found = new Assessor(TestLaw.Lawbook, catalogue, TestLaw.Today).Assess(candle, null, problems).Single();
        Assert.Empty(problems.Found);
        return found;
    }

    private static GenericUse? Use(Assessment a, string name) =>
        GenericUses.Of(a.Edition.PoisonCentres!, a.Composition.Recipe, a.Substances).SingleOrDefault(u => u.Identifier.Name == name);

    [Theory]
    [InlineData(6.25, true)]
    [InlineData(6.26, false)]
    [Outside(
        "CLP Annex VIII, Part B, 3.2.3: 'perfumes' for ingredients that are not classified for health, up to 5 % together, consolidated text of 1 May 2026"
    )]
    public void Perfumes_may_be_called_so_up_to_a_share(double load, bool allowed)
    {
        GenericUse use = Use(Assess(("oil.yaml", Oil("Oil", Plain(80))), ("one.yaml", Candle("One", "oil", load, 1))), "perfumes")!;
        Assert.Equal(["Breeze"], use.Components);
        Assert.Equal(allowed, use.IsAllowed);
    }

    [Theory]
    [InlineData("  - { name: Breeze, share: \"80\", classes: [\"Eye Irrit. 2, H319\"] }")]
    [InlineData("  - { name: Breeze, share: \"80\" }")]
    [InlineData("  - { name: Paraffin waxes and hydrocarbon waxes, cas: 8002-74-2, share: \"80\", classes: not classified }")]
    [Outside(
        "CLP Annex VIII, Part B, 3.2.3: not classified for any health hazard, and used exclusively to add perfume; unknown is not 'not classified'"
    )]
    public void What_is_hazardous_or_unknown_or_also_in_the_wax_is_named(string line) =>
        Assert.Null(Use(Assess(("oil.yaml", Oil("Oil", line)), ("one.yaml", Candle("One", "oil", 5, 1))), "perfumes"));

    [Theory]
    [InlineData("Aquatic Chronic 2, H411")]
    [InlineData("Flam. Liq. 3, H226")]
    [Outside("CLP Annex VIII, Part B, 3.2.3: only hazards for health count")]
    public void Other_hazards_keep_nothing_from_being_called_perfume(string hazard)
    {
        string line = $"  - {{ name: Breeze, share: \"80\", classes: [\"{hazard}\"] }}";
        Assert.NotNull(Use(Assess(("oil.yaml", Oil("Oil", line)), ("one.yaml", Candle("One", "oil", 5, 1))), "perfumes"));
    }

    [Theory]
    [InlineData(33, true)]
    [InlineData(36, false)]
    [Outside("CLP Annex VIII, Part B, 3.2.3: colouring agents up to 25 %, from memory")]
    public void Colouring_agents_may_be_called_so_up_to_a_share(double percentOfWax, bool allowed)
    {
        string dye = FormattableString.Invariant($"extras: [{{ extra: chip, percentOfWax: {percentOfWax} }}]");
        GenericUse use = Use(
            Assess(("oil.yaml", Oil("Oil", Plain(80))), ("one.yaml", Candle("One", "oil", 5, 1, dye))),
            "colouring agents"
        )!;
        Assert.Equal((allowed, "Grey pigment"), (use.IsAllowed, Assert.Single(use.Components)));
    }

    [Fact]
    [Outside(Mixture)]
    public void An_oil_that_is_not_known_in_full_is_told_as_a_mixture()
    {
        Assessment a = Assess(("oil.yaml", Oil("Sea Oil", Plain(79))), ("one.yaml", Candle("One", "oil", 5, 1)));
        MixtureInMixture mixture = Assert.Single(MixturesInMixture.Of(a.Composition.Recipe));
        Assert.Equal(("Sea Oil", 5), (mixture.Name, Math.Round(mixture.Share.Value, 9)));
        Assert.Contains("no UFI", mixture.Lacking, StringComparison.Ordinal);
        string paper = Print(a);
        Assert.Contains("Sea Oil: no UFI is declared", paper, StringComparison.Ordinal);
        Assert.Contains("Mixtures in the mixture", paper, StringComparison.Ordinal);
    }

    [Fact]
    [Outside(Mixture)]
    public void An_oil_that_is_known_in_full_is_told_by_its_ingredients() =>
        Assert.Empty(
            MixturesInMixture.Of(
                Assess(("oil.yaml", Oil("Sea Oil", Plain(80))), ("one.yaml", Candle("One", "oil", 5, 1))).Composition.Recipe
            )
        );

    [Theory]
    [InlineData("ufi: " + PublishedUfi, "")]
    [InlineData("supplierTelephone: '1'\nsupplierEmail: a@b.example", "")]
    [InlineData("supplierTelephone: '1'", "the electronic address ('supplierEmail') is not declared")]
    [InlineData("supplierEmail: a@b.example", "the telephone ('supplierTelephone') is not declared")]
    [Outside(Mixture)]
    public void A_mixture_needs_its_ufi_or_its_suppliers_addresses(string declared, string lacking)
    {
        Assessment a = Assess(("oil.yaml", Oil("Oil", Plain(79), declared)), ("one.yaml", Candle("One", "oil", 5, 1)));
        string said = Assert.Single(MixturesInMixture.Of(a.Composition.Recipe)).Lacking;
        Assert.Equal(lacking.Length == 0, said.Length == 0);
        Assert.Contains(lacking, said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(PublishedUfi, false)]
    [InlineData("C23S-PQ2V-AMH9-VVRG", true)]
    [Outside("ECHA, UFI Developers Manual, version 1.4, November 2021: the example for Austria, and the check character")]
    public void A_ufi_of_an_oil_that_fails_its_check_is_said(string ufi, bool said)
    {
        Assessment a = Assess(("oil.yaml", Oil("Oil", Plain(79), "ufi: " + ufi)), ("one.yaml", Candle("One", "oil", 5, 1)));
        Assert.Equal(said, a.Findings.Any(f => f.What.Contains("The UFI declared for Oil", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_ufi_that_has_not_the_form_is_refused_with_its_place()
    {
        var problems = new Problems();
        TestLaw.Read(problems, [("oil.yaml", Oil("Oil", Plain(80), "ufi: C23S-PQ2V"))]);
        Problem problem = Assert.Single(problems.Found);
        Assert.Equal(("oil.yaml", 9, 6), (problem.Place.File, problem.Place.Line, problem.Place.Column));
    }

    [Theory]
    [InlineData("other", 5, true)] // another perfume at the same load
    [InlineData("other", 5.01, false)]
    [InlineData("other", 4, false)] // the wax's share differs as well
    [InlineData("eyes", 5, false)] // another class for health
    [Outside(
        "CLP Annex VIII, Part A, 4.3: one group where only perfumes differ, 5 % in each at most, consolidated text of 1 May 2026; from memory: 4.2, the same classes for health"
    )]
    public void Candles_that_differ_in_little_perfume_may_be_told_in_one_group(string oil, double load, bool together)
    {
        Assessment a = Assess(
            ("oil.yaml", Oil("Oil", Plain(80))),
            ("other.yaml", Oil("Other", Plain(80).Replace("Breeze", "Storm", StringComparison.Ordinal))),
            ("eyes.yaml", Oil("Eyes", "  - { name: Storm, share: \"80\", classes: [\"Eye Dam. 1, H318\"] }")),
            ("one.yaml", Candle("One", "oil", load > 5 ? load : 5, 1)),
            ("two.yaml", Candle("Two", oil, load, 2))
        );
        Assert.Equal(together ? ["Two"] : [], a.Notification.Value.GroupWith);
    }

    [Fact]
    [Outside("CLP Annex VIII, Part B: the kinds and sizes of all packages of the mixture, consolidated text of 1 May 2026")]
    public void The_packages_are_those_of_all_candles_of_the_composition()
    {
        Assessment a = Assess(
            ("oil.yaml", Oil("Oil", Plain(80))),
            ("one.yaml", Candle("One", "oil", 5, 1)),
            ("two.yaml", Candle("Two", "oil", 5, 1).Replace("vessel: jar", "vessel: tin", StringComparison.Ordinal)),
            ("three.yaml", Candle("Three", "oil", 5, 3))
        );
        Assert.Equal(["Straight jar", "Seamless tin"], a.Notification.Value.Packages.Select(p => p.Vessel));
        Assert.Equal(280, a.Notification.Value.Packages[0].Contents!.Value.Value);
    }

    [Theory]
    [InlineData("", "", "unknown: none is declared")]
    [InlineData("", "productCategory: PC-ABC-1", "PC-ABC-1")]
    [InlineData("productCategory: PC-XYZ", "productCategory: PC-ABC-1", "PC-XYZ")]
    public void The_category_is_declared_and_never_guessed(string ofCandle, string ofMaker, string printed)
    {
        var problems = new Problems();
        Catalogue catalogue = TestLaw.Read(
            problems,
            [
                .. Around.Skip(1),
                ("maker.yaml", $"{Around[0].Item2}\n{ofMaker}\n"),
                ("oil.yaml", Oil("Oil", Plain(80))),
                ("one.yaml", Candle("One", "oil", 5, 1, ofCandle)),
            ]
        );
        Assessment a = new Assessor(TestLaw.Lawbook, catalogue, TestLaw.Today)
            .Assess(catalogue.OfKind<Candle>().Single(), null, problems)
            .Single();
        Assert.Contains(printed, Print(a), StringComparison.Ordinal);
    }

    [Fact]
    [Outside("CLP Annex VIII, Part B: languages of the state, text of section 11, no pH and why, consolidated text of 1 May 2026")]
    public void The_paper_says_languages_toxicology_and_why_there_is_no_ph()
    {
        string paper = Print(Assess(("oil.yaml", Oil("Oil", Plain(80))), ("one.yaml", Candle("One", "oil", 5, 1))));
        Assert.Contains("Ireland: en", paper, StringComparison.Ordinal);
        Assert.Contains("Luxembourg: fr or de", paper, StringComparison.Ordinal);
        Assert.Contains("not applicable: solid", paper, StringComparison.Ordinal);
        Assert.Contains("skin sensitisation: Skin Sens. 1, H317", paper, StringComparison.Ordinal);
    }

    private static string Print(Assessment a) =>
        string.Join(' ', PrintedText.Of("poison-facts", a, "en").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}

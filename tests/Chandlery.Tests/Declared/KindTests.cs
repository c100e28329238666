using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Paper.Papers;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Declared;

/// <summary>What each kind of product asks of its declaration.</summary>
public sealed class KindTests
{
    private static Problems ProblemsOf(string file, params (string From, string To)[] changes)
    {
        using var folder = new MakersFolder();
        foreach ((string from, string to) in changes)
        {
            folder.Change(file, from, to);
        }

        var problems = new Problems();
        Catalogue catalogue = folder.Catalogue;
        new Assessor(TestLaw.Lawbook, catalogue, TestLaw.Today).Assess(
            catalogue.OfKind<Candle>().First(c => c.Id == Path.GetFileNameWithoutExtension(file)),
            null,
            problems
        );
        return problems;
    }

    [Theory]
    [InlineData("candles/fig-melts.yaml", "ifraCategory:", "wicks: { count: 1, trimToMm: 5 }\nifraCategory:", "A wax melt has no 'wicks'.")]
    [InlineData("candles/fig-melts.yaml", "vessel: melt-shell-6\n", "", "A wax melt needs 'vessel'.")]
    [InlineData("candles/fig-melts.yaml", "wax: soy-flake", "wax: mild-base", "Mild Reed Base is a liquid base; a wax melt needs a wax.")]
    [InlineData("candles/fig-melts.yaml", "use: indoor", "use: outdoor", "A wax melt is for indoor use alone.")]
    [InlineData("candles/fig-melts.yaml", "kind: wax-melt", "kind: wax-mlet", "There is no kind of product named 'wax-mlet'.")]
    [InlineData("candles/breakwater-pillar.yaml", "size: { diameterMm: 70, heightMm: 130 }\n", "", "A pillar candle needs 'size'.")]
    [InlineData("candles/breakwater-pillar.yaml", "size: {", "vessel: tin-100\nsize: {", "A pillar candle has no 'vessel'.")]
    [InlineData("candles/slipway-torch.yaml", "size: {", "vessel: tin-100\nsize: {", "A garden torch needs either 'vessel' or 'size'.")]
    [InlineData("candles/slipway-torch.yaml", "use: outdoor", "use: indoor", "A garden torch is for outdoor use alone.")]
    [InlineData("candles/dune-reeds.yaml", "kind: reed-diffuser", "kind: wax-melt", "The quantity of a wax melt is a mass.")]
    [InlineData(
        "candles/dune-reeds.yaml",
        "base: mild-base",
        "base: soy-flake",
        "Soy Flake 52 is a wax; a reed diffuser needs a liquid base."
    )]
    public void A_declaration_that_does_not_fit_its_kind_is_refused(string file, string from, string to, string what)
    {
        Problems problems = ProblemsOf(file, (from, to));
        Assert.Contains(problems.Found, p => p.What == what && p.Remedy.Length > 0);
    }

    [Theory]
    [InlineData("base: mild-base", "wax: soy-flake", "'wax' is of solids")]
    [InlineData("netMillilitres: 100", "netGrams: 93", "'netGrams' is the quantity of a solid")]
    [InlineData("kind: reed-diffuser\n", "", "A liquid needs its 'kind'.")]
    [InlineData(", method: EN ISO 3679", "", "needs its method")]
    [InlineData("  densityGramsPerMl: 0.93\n", "", "'densityGramsPerMl' is missing")]
    public void A_liquid_that_contradicts_itself_is_refused_on_reading(string from, string to, string what)
    {
        using var folder = new MakersFolder();
        string text = folder.Read("candles/dune-reeds.yaml");
        Assert.Contains(from, text, StringComparison.Ordinal);
        var problems = new Problems();
        IDeclaration? read = new Chandlery.Core.Declared.Reading.DeclarationReader(TestLaw.Lawbook.Vocabulary).Read(
            text.Replace(from, to, StringComparison.Ordinal),
            "reeds.yaml",
            "reeds",
            problems
        );
        Assert.Null(read);
        Assert.Contains(problems.Found, p => p.What.Contains(what, StringComparison.Ordinal));
    }

    [Fact]
    public void A_file_that_names_no_kind_is_a_container_candle()
    {
        Assessment a = TestLaw.Demo("candles/fig-tin.yaml");
        Assert.Null(a.Candle.Kind);
        Assert.Equal(ProductKind.Usual, a.Kind.Id);
    }

    [Fact]
    public void The_demo_has_one_product_of_each_kind()
    {
        using var folder = new MakersFolder();
        IEnumerable<string> shown = folder.Catalogue.OfKind<Candle>().Select(c => c.Kind?.Id ?? ProductKind.Usual);
        Assert.Equal(TestLaw.Lawbook.Kinds.Codes.Order(), shown.Distinct().Order());
    }

    [Fact]
    public void No_kind_goes_without_a_paper()
    {
        Assert.All(TestLaw.Lawbook.Kinds, kind => Assert.DoesNotContain(PaperList.Own.All, paper => kind.WithoutPapers.Contains(paper.Id)));
    }

    [Fact]
    public void Every_kind_says_what_saves_lives_in_three_messages()
    {
        Assert.All(TestLaw.Lawbook.Kinds, k => Assert.Equal(3, k.Messages[MessageList.First].Count));
    }
}

using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.SafetyFiles;

/// <summary>Gift sets: what their boxes bear and what stops their sale.</summary>
public sealed class SetTests
{
    private const string File = "sets/first-evening.yaml";

    private static IReadOnlyList<SetSheet> Sheets(MakersFolder folder, Problems problems)
    {
        Catalogue catalogue = folder.Catalogue;
        var assessor = new Assessor(TestLaw.Lawbook, catalogue, TestLaw.Today);
        List<Assessment> all = [.. catalogue.OfKind<Candle>().SelectMany(c => assessor.Assess(c, null, new Problems()))];
        return new SetFinder(TestLaw.Lawbook, all).Of(catalogue.OfKind<GiftSet>().Single(), problems);
    }

    private static SetSheet Only(MakersFolder folder)
    {
        var problems = new Problems();
        SetSheet sheet = Assert.Single(Sheets(folder, problems));
        Assert.Empty(problems.Found);
        return sheet;
    }

    [Theory]
    [InlineData("no", "Fig Tin, Dune Reeds")]
    [InlineData("yes", "")]
    [Outside("CLP Art. 33(2) (from memory)")]
    public void A_closed_box_bears_the_labels_that_cannot_be_read_through_it(string seenThrough, string names)
    {
        using var folder = new MakersFolder();
        folder.Change(File, "seenThrough: no", $"seenThrough: {seenThrough}");
        SetSheet sheet = Only(folder);
        Assert.Equal(names, string.Join(", ", sheet.OnBox.Select(l => l.Product.Candle.Name)));
        Assert.False(sheet.StopsSale);
    }

    [Fact]
    public void A_set_is_sold_only_where_each_of_its_products_is()
    {
        using var folder = new MakersFolder();
        folder.Change(File, "soldIn: [IE]", "soldIn: [IE, FR]");
        Assert.True(Only(folder).StopsSale);
    }

    [Fact]
    public void What_stops_a_product_stops_the_set()
    {
        using var folder = new MakersFolder();
        folder.Change("candles/dune-reeds.yaml", "  flashPoint: { celsius: 71, method: EN ISO 3679 }\n", "");
        Assert.Contains(Only(folder).Findings, f => f.What.StartsWith("Dune Reeds: ", StringComparison.Ordinal));
        Assert.True(Only(folder).StopsSale);
    }

    [Fact]
    public void A_product_that_there_is_not_is_said_with_the_nearest()
    {
        using var folder = new MakersFolder();
        folder.Change(File, "product: fig-tin", "product: fig-tim");
        var problems = new Problems();
        Assert.Empty(Sheets(folder, problems));
        Assert.Equal("Did you mean 'fig-tin'?", Assert.Single(problems.Found).Remedy);
    }
}

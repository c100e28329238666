using System.Text.RegularExpressions;
using Chandlery.Core.Law.Reading;
using Chandlery.Files;
using Chandlery.Paper.Papers;
using Chandlery.Yaml;

namespace Chandlery.Tests.Data;

/// <summary>What stands in a data file by itself may still not go together with the rest: that is told, at its file.</summary>
public sealed class RefusedDataTests
{
    private static readonly IReadOnlyDictionary<string, string> Shipped = ShippedFiles.Data(null, new Problems());

    [Theory]
    [InlineData(
        "law/eu-clp/precautions.yaml",
        "rank: 30\n    use: keep",
        "rank: 32\n    use: keep",
        "P202 covers P201 and must have a lower rank."
    )]
    [InlineData("law/eu-clp/poison-centres.yaml", "(?m)^  - { what: ph,.*\n", "", "'points' has no row for Ph.")]
    [InlineData("law/eu-clp/poison-centres.yaml", "what: ph,", "what: category,", "This point of the notification stands here twice.")]
    [InlineData("law/eu-clp/label-format.yaml", "status: law", "status: expected", "'formats' has no row that is law.")]
    [InlineData("law/eu-clp/label-format.yaml", "- \\{ figureMm", "- { upToGrams: 2000, figureMm", "The last row of 'bands' must be open.")]
    [InlineData("law/hazards.yaml", "(?s)groups:.*", "groups: []", "The file has no hazards.")]
    [InlineData("substances/known.tsv", "\taldehyde\t\n", "\taldehyde\n", "The line has 4 cells.")]
    [InlineData("substances/annex-vi.yaml", "edition: eu-clp", "edition: eu-clq", "edition")]
    [InlineData("places.yaml", "code: IE", "code: IRL", "'IRL' is no code of a place of sale.")]
    [InlineData("places.yaml", "code: IE", "code: AT", "The place 'AT' stands here twice.")]
    [InlineData("product-safety/places.yaml", "places: \\[GB\\]", "places: [GB, IE]", "'IE' stands here twice.")]
    [InlineData("product-safety/places.yaml", "\nlawUnknown: \\[UN\\]", "", "No law on product safety is named for 'UN'.", "places.yaml")]
    [InlineData("kinds/wax-melt.yaml", "withoutPapers: \\[\\]", "withoutPapers: [crd]", "There is no paper 'crd'.")]
    public void What_does_not_go_together_is_refused(string file, string what, string instead, string says, string? at = null)
    {
        string text = Regex.Replace(Shipped[file], what, instead);
        Assert.NotEqual(Shipped[file], text);
        var problems = new Problems();
        Assert.Null(LawReader.Read(new Dictionary<string, string>(Shipped.ToDictionary()) { [file] = text }, PaperList.Own.Ids, problems));
        Assert.Contains(
            problems.Found,
            p => p.Place.File == "data/" + (at ?? file) && p.Place.Line > 0 && p.What.Contains(says, StringComparison.Ordinal)
        );
    }
}

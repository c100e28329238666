using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.SafetyFiles.Quantities;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Declared;

/// <summary>Codes of places and languages that a candle names are checked where they stand.</summary>
public sealed class CodeTests
{
    private static readonly string Candle = File.ReadAllText(Path.Combine(TestLaw.DemoFolder, "candles", "slate-jar.yaml"));

    private static Problem Found(string soldIn)
    {
        var problems = new Problems();
        (string, string)[] others =
        [
            .. Directory
                .EnumerateFiles(TestLaw.DemoFolder, "*.yaml", SearchOption.AllDirectories)
                .Where(f => !f.EndsWith("slate-jar.yaml", StringComparison.Ordinal))
                .Select(f => (f, File.ReadAllText(f))),
        ];
        string text = Candle.Replace("soldIn: [IE, DE]", soldIn, StringComparison.Ordinal);
        Catalogue catalogue = TestLaw.Read(problems, [("jar.yaml", text), .. others]);
        if (catalogue.OfKind<Candle>().FirstOrDefault(c => c.Id == "jar") is { } candle)
        {
            new Assessor(TestLaw.Lawbook, catalogue, TestLaw.Today).Assess(candle, null, problems);
        }

        return Assert.Single(problems.Found);
    }

    [Theory]
    [InlineData("soldIn: [IE, 49]", 14, "'49' is no place of sale.", "IE for Ireland")]
    [InlineData("soldIn: [IE, Germny]", 14, "There is no edition of the law for the place 'Germny'.", "Did you mean 'Germany'?")]
    [InlineData("soldIn: [IE, QQ]", 14, "There is no edition of the law for the place 'QQ'.", "GB (Great Britain)")]
    [InlineData("soldIn: [IE, DE]\nlanguages: [en, de, DA]", 21, "'DA' is no code of a language.", "two small letters")]
    [InlineData("soldIn: [IE, DE]\nlanguages: [en, de, xx]", 21, "There are no texts in the language 'xx'.", "Languages so far: bg")]
    [InlineData("soldIn: [IE, DE]\nlanguages: [en]", 13, "are not enough for Germany", "Add it to 'languages'")]
    public void A_wrong_code_is_told_with_its_place_and_what_to_write(string soldIn, int column, string what, string remedy)
    {
        Problem problem = Found(soldIn);
        int line = Candle.Split('\n').ToList().FindIndex(l => l.StartsWith("soldIn", StringComparison.Ordinal)) + soldIn.Split('\n').Length;
        Assert.Equal(("jar.yaml", line, column), (problem.Place.File, problem.Place.Line, problem.Place.Column));
        Assert.Contains(what, problem.What, StringComparison.Ordinal);
        Assert.Contains(remedy, problem.Remedy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("UK", "GB")]
    [InlineData("united kingdom", "GB")]
    [InlineData("Germany", "DE")]
    [InlineData("USA", "US")]
    [InlineData("NI", "NI")]
    [InlineData("Deutschland", "DE")]
    [InlineData("de", "DE")]
    public void A_place_is_understood_by_what_people_call_it(string written, string code) =>
        Assert.Equal(code, TestLaw.Lawbook.FindPlace(written)!.Code.Text);

    [Fact]
    public void A_candle_is_sold_where_its_declaration_says_in_words()
    {
        using var folder = new MakersFolder();
        folder.Change("candles/slate-jar.yaml", "soldIn: [IE, DE]", "soldIn: [Ireland, Deutschland, UK]");
        (_, string text, string errors) = Command.Run("assess", Path.Combine(folder.Path, "candles", "slate-jar.yaml"));
        Assert.Equal("", errors);
        Assert.Contains("sold in Ireland, Germany", text, StringComparison.Ordinal);
        Assert.Contains("sold in Great Britain", text, StringComparison.Ordinal);
        Assert.Contains(PackagingMark.Of(folder.Catalogue, TestLaw.Lawbook, TestLaw.Today), m => m.Country == "GB");
        Assert.DoesNotContain(PackagingMark.Of(folder.Catalogue, TestLaw.Lawbook, TestLaw.Today), m => m.Country == "UK");
    }
}

using Chandlery.Core.Law;
using Chandlery.Core.Law.Reading;
using Chandlery.Core.SafetyDataSheets;
using Chandlery.Files;
using Chandlery.Paper.Papers;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Sheets;

/// <summary>The sheet is data: what is mistyped in it is refused where it stands, and what is translated is printed.</summary>
public sealed class SheetDataTests
{
    private const string Sentences = "safety-data-sheet/sentences.yaml";
    private const string European = "law/eu-clp/safety-sheet.yaml";
    private const string German = "languages/de/safety-data-sheet.yaml";

    // A language whose sentences nobody has translated.
    private const string Polish = "languages/pl/safety-data-sheet.yaml";

    [Theory]
    [InlineData(Sentences, "when: [dyed]", "when: [died]", "'died' is neither a condition", "Did you mean 'dyed'?")]
    [InlineData(Sentences, "when: [Skin Sens.]", "when: [Skin Sence.]", "'Skin Sence.' is neither", "Did you mean 'Skin Sens.'?")]
    [InlineData(Sentences, "unless: [classified]", "unless: [clasified]", "'clasified' is neither", "Did you mean 'classified'?")]
    [InlineData(Sentences, "in: \"2.3\"", "in: \"2.4\"", "no subsection '2.4'", "2.3")]
    [InlineData(Sentences, "{edition}:", "{editon}:", "'{editon}' is no mark", "Did you mean 'edition'?")]
    [InlineData(Sentences, "part: composition", "part: compositoin", "'part: compositoin' is not known", "composition")]
    [InlineData(
        Sentences,
        "assessed: up to {undeclared}.\", when: [hasUndeclared]",
        "assessed: up to {undeclared}.\"",
        "'{undeclared}' has a value only under a condition",
        "when: [hasUndeclared]"
    )]
    [InlineData(
        Sentences,
        "when: [hasUfi] }\n\n  - { in: \"1.2\"",
        "when: [hasUfi, indoor] }\n\n  - { in: \"1.2\"",
        "'{ufi}' has a value only",
        "hasUfi"
    )]
    [InlineData(Sentences, "acuteM: \"M (acute) = {factor}\"", "acuteM: \"M (acute)\"", "marks of 'acuteM'", "{factor}")]
    [InlineData(Sentences, "key: openFlame", "key: hotWax2, colour: red", "'colour' is not a field", "")]
    [InlineData(Sentences, "key: treatSymptoms", "key: openFlame", "'openFlame' is the key of another sentence", "key of its own")]
    [InlineData(European, "replaces: candleTests", "replaces: candelTests", "no sentence 'candelTests'", "Did you mean 'candleTests'?")]
    [InlineData(European, ", clause: REACH Art. 59", "", "has the mark '{clause}', and the row has no clause", "clause")]
    [InlineData(
        European,
        "none is asked for ({clause}: registered",
        "none is asked for (registered",
        "The clause is not printed",
        "{clause}"
    )]
    [InlineData(European, "persistent: [PBT, vPvB]", "persistent: [PTB, vPvB]", "'PTB' is no hazard", "PBT")]
    [InlineData(German, "  method: \"Methode\"", "  method: \"Methode\"\n  methd: \"Methode\"", "'methd' is nothing", "method")]
    public void What_is_mistyped_is_refused_where_it_stands(string file, string right, string wrong, string what, string remedy)
    {
        Dictionary<string, string> texts = Texts();
        Assert.Contains(right, texts[file], StringComparison.Ordinal);
        texts[file] = texts[file].Replace(right, wrong, StringComparison.Ordinal);
        var problems = new Problems();
        Assert.Null(LawReader.Read(texts, PaperList.Own.Ids, problems));
        Problem found = Assert.Single(
            problems.Found.Where(p => p.What.Contains(what, StringComparison.Ordinal)).DistinctBy(p => p.What).Take(1)
        );
        Assert.Contains(remedy, found.Remedy, StringComparison.Ordinal);
        Assert.Equal("data/" + file, found.Place.File);
        Assert.True(found.Place is { Line: > 1, Column: > 1 }, found.ToString());
    }

    [Theory]
    [InlineData("wasteLocl: \"Rest\"", "'wasteLocl' is nothing that the sheet says", "wasteLocal")]
    [InlineData("undeclared: \"Nicht angegeben.\"", "'undeclared' must have the same marks", "{undeclared}")]
    public void A_translation_that_fits_no_sentence_is_refused(string line, string what, string remedy)
    {
        Dictionary<string, string> texts = Texts();
        texts[Polish] += $"sentences:\n  {line}\n";
        var problems = new Problems();
        Assert.Null(LawReader.Read(texts, PaperList.Own.Ids, problems));
        Problem found = Assert.Single(problems.Found);
        Assert.Contains(what, found.What, StringComparison.Ordinal);
        Assert.Contains(remedy, found.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_translated_is_printed_and_the_rest_is_told_to_be_english()
    {
        Dictionary<string, string> texts = Texts();
        texts[Polish] = texts[Polish].Replace("words:\n", "words:\n  code: Kod\n", StringComparison.Ordinal);
        texts[Polish] += "sentences:\n  oxidisers: \"Silne utleniacze.\"\n  undeclared: \"Nie podano: do {undeclared}.\"\n";
        var problems = new Problems();
        Lawbook lawbook = LawReader.Read(texts, PaperList.Own.Ids, problems)!;
        Assert.Empty(problems.Found);
        SafetySheet sheet = SafetySheetMaker.Make(
            TestLaw.Demo("candles/harbour-bowl.yaml"),
            lawbook.FindLanguage("pl")!,
            lawbook,
            1,
            problems
        )!;
        Assert.Equal("Silne utleniacze.", ((SheetText)sheet.Find("10.5")!.Blocks[0]).Text);
        Assert.Equal("Nie podano: do 1,82 %.", sheet.Find("3.2")!.Blocks.OfType<SheetText>().Last().Text);
        Assert.Contains(((SheetTable)sheet.Find("1.1")!.Blocks[0]).Rows, r => r[0] == "Kod");
        string[] english = sheet.LanguageNote!.Split(": ")[1].Split(". ")[0].Split(", ");
        Assert.DoesNotContain("10.5", english);
        Assert.Contains("10.4", english);
        Assert.Contains("3.2", english);
        Assert.Contains("11.1", english);

        // A paper that shows a part of the sheet speaks of that part alone.
        Assert.Null(sheet.Languages.Of(["10.5"]));
        Assert.Contains(": 10.4.", sheet.Languages.Of(["10.4", "10.5"]), StringComparison.Ordinal);
    }

    [Fact]
    public void An_english_sheet_has_no_note_on_its_language()
    {
        var problems = new Problems();
        SafetySheet sheet = SafetySheetMaker.Make(
            TestLaw.Demo("candles/harbour-bowl.yaml"),
            TestLaw.Lawbook.FindLanguage("en")!,
            TestLaw.Lawbook,
            1,
            problems
        )!;
        Assert.Null(sheet.LanguageNote);
    }

    private static Dictionary<string, string> Texts() => new(ShippedFiles.Data(null, new Problems()));
}

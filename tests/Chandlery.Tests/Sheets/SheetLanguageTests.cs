using System.Text.RegularExpressions;
using Chandlery.Core.Assessed;
using Chandlery.Core.Judged;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;
using Chandlery.Core.SafetyDataSheets;
using Chandlery.Files;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Sheets;

/// <summary>A sheet is in the language of the place, whole, where the language has its sentences; whatever is not is told.</summary>
public sealed partial class SheetLanguageTests
{
    private static readonly Lawbook Law = TestLaw.Lawbook;
    private static readonly string[] Whole = ["de", "es", "fr", "it", "nl"];

    // What a supplier writes of an oil is the supplier's, in the language of the folder.
    private static readonly string[] OfSuppliers = ["16"];

    public static TheoryData<string, string> Sheets()
    {
        var sheets = new TheoryData<string, string>();
        foreach (
            string file in Directory.EnumerateFiles(Path.Combine(TestLaw.DemoFolder, "candles"), "*.yaml").Order(StringComparer.Ordinal)
        )
        {
            foreach (string language in Whole)
            {
                sheets.Add($"candles/{Path.GetFileName(file)}", language);
            }
        }

        return sheets;
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Nothing_of_ours_is_english(string candle, string language)
    {
        SafetySheet sheet = Make(TestLaw.Demo(candle, "IE"), language);
        string[] english = sheet.LanguageNote?.Split(": ")[1].Split(". ")[0].Split(", ") ?? [];
        Assert.Empty(english.Except(OfSuppliers));

        Assert.Empty(English(sheet));
    }

    [Fact]
    public void What_blocks_every_sale_is_told_as_well()
    {
        foreach (string language in Whole)
        {
            Assert.Empty(English(Make(TestLaw.Stopped(), language)));
        }
    }

    [Fact]
    public void Each_of_these_languages_has_every_sentence_and_all_tell_the_same()
    {
        HashSet<string> keys = [.. Law.SheetWords.Find("de")!.Sentences.Keys];
        IReadOnlyList<SheetSentence> own = [.. Law.SheetSentences.RowsFor(Law.Edition("eu-clp").SafetySheet).OfType<SheetSentence>()];
        Assert.Empty(own.Where(s => HasWords(s.Text) && !keys.Contains(s.Key)).Select(s => s.Key));
        Assert.All(Whole, code => Assert.Equal(keys, Law.SheetWords.Find(code)!.Sentences.Keys.ToHashSet()));
        IReadOnlyList<string> told = Entries("de", "told");
        Assert.True(told.Count > 80);
        Assert.All(Whole, code => Assert.Equal(told.Order(), Entries(code, "told").Order()));
    }

    // A sentence that a diffuser's sheet may print must not speak of a candle; English ones are said of each kind by themselves.
    [Fact]
    public void What_several_kinds_share_speaks_of_the_product()
    {
        HashSet<string> candlesAlone = [.. Law.SheetWords.Find("de")!.Sentences.Keys.Where(IsForCandlesAlone)];
        Assert.InRange(candlesAlone.Count, 20, 60);
        foreach (string code in Whole)
        {
            Assert.Empty(
                Law.SheetWords.Find(code)!
                    .Sentences.Where(s => !candlesAlone.Contains(s.Key) && CandleWords().IsMatch(s.Value))
                    .Select(s => $"{code}: {s.Key}")
            );
            Assert.Empty(Values(code, "told").Where(v => CandleWords().IsMatch(v)).Select(v => $"{code}: {v}"));
        }
    }

    [Fact]
    public void What_is_told_is_said_somewhere()
    {
        Edition edition = Law.Edition("eu-clp");
        SafetySheetRules rules = edition.SafetySheet;
        List<string> said =
        [
            .. ProgramSentences.Of("Chandlery.Core/Classified", "Chandlery.Core/Assessed").Select(s => s.Text),
            .. Law.SheetSentences.RowsFor(rules).OfType<SheetSentence>().SelectMany(s => new[] { s.Label, s.Clause }).OfType<string>(),
            .. Law.SheetSentences.Abbreviations.Concat(rules.Abbreviations).SelectMany(s => new[] { s.Label, s.Clause }).OfType<string>(),
            .. States(edition).SelectMany(l => l.Rules.Select(r => r.Group).Concat(l.NotComputed.Select(n => n.Why))),
            .. edition.Sources.Select(s => s + "."),
            .. edition.DoesNotCover,
            edition.Name,
            rules.Format,
            rules.FormatClause,
            "Aquatic Acute 1 and Aquatic Chronic 1",
        ];
        Assert.DoesNotContain(Entries("de", "told"), key => !said.Any(s => s.Contains(Longest(key), StringComparison.Ordinal)));
    }

    [Fact]
    public void A_pattern_takes_names_and_figures_and_never_a_sentence()
    {
        var told = new ToldSentences(
            new Dictionary<string, string>
            {
                ["{0} makes up to {1}; it is {2}."] = "{2}, denn {0} macht bis zu {1} aus.",
                ["That includes {0}."] = "Das schließt {0} ein.",
                ["a test (of its own)"] = "eine Prüfung (für sich)",
            },
            new Dictionary<string, string>
            {
                ["Annex"] = "Anhang",
                ["Table"] = "Tabelle",
                ["and"] = "und",
            }
        );
        var figures = new FigureFormat(',');
        Assert.Equal(
            "Skin Sens. 1A, denn Öl. 3 macht bis zu 2,4 % aus.",
            told.Find("Öl. 3 makes up to 2.4 %; it is Skin Sens. 1A.", figures)
        );
        Assert.Equal(
            "Eye Dam. 1, denn X macht bis zu 1 % aus. Das schließt Skin Corr. 1B ein. (CLP Anhang I, 3.2.3 und Tabelle 3.2.3)",
            told.Find("X makes up to 1 %; it is Eye Dam. 1. That includes Skin Corr. 1B. (CLP Annex I, 3.2.3 and Table 3.2.3)", figures)
        );
        Assert.Equal("eine Prüfung (für sich)", told.Find("a test (of its own)", figures));
        Assert.Null(told.Find("X makes up to 1 %; it is 1. Nobody knows why.", figures));
        Assert.Null(told.Find("Nobody knows why.", figures));
    }

    private static IReadOnlyList<string> English(SafetySheet sheet) =>
        [
            .. sheet
                .Sections.SelectMany(s => s.Subsections)
                .Where(s => !OfSuppliers.Contains(s.Number))
                .SelectMany(s => s.Blocks)
                .SelectMany(Texts)
                .Append(sheet.Format)
                .Where(t => EnglishWords().IsMatch(t)),
        ];

    private static IEnumerable<LawInForce> States(Edition edition) =>
        Enum.GetValues<PhysicalState>().Select(s => edition.On(new DateOnly(2026, 11, 26)).ForState(s));

    private static SafetySheet Make(Assessment a, string language) =>
        SafetySheetMaker.Make(a, Law.FindLanguage(language)!, Law, 1, new Problems())!;

    private static IEnumerable<string> Texts(SheetBlock block) =>
        block switch
        {
            SheetText text => [text.Text],
            SheetTable table => table.Rows.SelectMany(r => r),
            _ => [],
        };

    private static bool IsForCandlesAlone(string key)
    {
        string row = File.ReadLines(Path.Combine(TestLaw.Repository, "data", "safety-data-sheet", "sentences.yaml"))
            .Concat(File.ReadLines(Path.Combine(TestLaw.Repository, "data", "law", "eu-clp", "safety-sheet.yaml")))
            .FirstOrDefault(l => l.Contains($"key: {key},", StringComparison.Ordinal), "");
        string unless = row.Split("unless:").ElementAtOrDefault(1) ?? "";
        return unless.Contains("warmed", StringComparison.Ordinal) && unless.Contains("liquid", StringComparison.Ordinal);
    }

    private static bool HasWords(string text) => Marks().Replace(text, "").Any(char.IsLetter);

    private static string Longest(string key) => Marks().Split(key).MaxBy(p => p.Length)!.Trim();

    private static IReadOnlyList<string> Entries(string code, string group) => [.. Group(code, group).Select(e => e.Key)];

    private static IReadOnlyList<string> Values(string code, string group) =>
        [.. Group(code, group).Select(e => ((YamlScalar)e.Value).Text)];

    private static IReadOnlyList<YamlEntry> Group(string code, string group)
    {
        string file = $"languages/{code}/safety-data-sheet.yaml";
        YamlMap map = YamlText.Read(ShippedFiles.Data(null, new Problems())[file], file, new Problems())!;
        return ((YamlMap)map.Entries.First(e => e.Key == group).Value).Entries;
    }

    [GeneratedRegex(@"\b(?:the|and|not|from|with|which|shares|candles?|Table|Annex|Regulation)\b")]
    private static partial Regex EnglishWords();

    [GeneratedRegex(@"[Kk]erze|bougie|\bvelas?\b|candel[ae]|kaars", RegexOptions.IgnoreCase)]
    private static partial Regex CandleWords();

    [GeneratedRegex(@"\{\w+\}")]
    private static partial Regex Marks();
}

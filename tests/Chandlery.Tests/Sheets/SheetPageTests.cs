using System.Text.RegularExpressions;
using Chandlery.Core.Assessed;
using Chandlery.Core.Law;
using Chandlery.Core.SafetyDataSheets;
using Chandlery.Paper.Papers.ProductInformation;
using Chandlery.Paper.Papers.SafetyDataSheets;
using Chandlery.Paper.Scenes;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Sheets;

/// <summary>The pages of a safety data sheet as a reader sees them.</summary>
public sealed partial class SheetPageTests
{
    private const double MarginMm = 18;

    // Section 9 has to say of each property for itself that nothing is known (REACH Annex II, Part A, 9.1).
    private const int MostOfOneSentence = 4;
    private const double LeastOfLastPage = 0.15;

    public static TheoryData<string, string> Sheets()
    {
        var sheets = new TheoryData<string, string>();
        foreach (string candle in new[] { "harbour-bowl", "slate-jar", "fig-tin" })
        {
            foreach (string language in new[] { "en", "de", "fr", "el", "hu", "fi" })
            {
                sheets.Add(candle, language);
            }
        }

        return sheets;
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Nothing_runs_past_a_margin(string candle, string language)
    {
        foreach (Scene page in Pages(candle, language))
        {
            Assert.All(
                Texts(page),
                t =>
                    Assert.True(
                        t.XMm >= MarginMm - 0.01 && t.XMm + t.WidthMm <= page.WidthMm - MarginMm + 0.01,
                        $"'{t.Shaped.Text}' reaches {t.XMm + t.WidthMm:0.0} mm"
                    )
            );
        }
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void The_last_page_is_not_left_empty(string candle, string language)
    {
        Scene last = Pages(candle, language)[^1];
        double foot = last.HeightMm - MarginMm - 6;
        double reached = Texts(last).Where(t => t.BaselineMm < foot).Max(t => t.BaselineMm);
        Assert.True(reached >= MarginMm + ((foot - MarginMm) * LeastOfLastPage), $"text ends at {reached:0} mm");
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Every_page_has_the_same_head(string candle, string language)
    {
        IReadOnlyList<Scene> pages = Pages(candle, language);
        string[] heads = [.. pages.Select(p => string.Join('|', Texts(p).Where(t => t.BaselineMm < MarginMm).Select(t => t.Shaped.Text)))];
        Assert.NotEqual("", Assert.Single(heads.Distinct()));
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void No_line_begins_with_a_mark_and_apostrophes_are_curved(string candle, string language)
    {
        foreach (Scene page in Pages(candle, language))
        {
            List<string> texts = [.. Texts(page).Select(t => t.Shaped.Text)];
            Assert.DoesNotContain(texts, t => t.TrimStart() is [';' or ':' or '?' or '!' or '»', ..]);
            Assert.DoesNotContain(texts, t => Straight().IsMatch(t) && !IsLaw(t, language));
        }
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void No_sentence_is_said_over_and_over(string candle, string language)
    {
        SafetySheet sheet = Sheet(candle, language);
        IEnumerable<IGrouping<string, string>> sentences = sheet
            .Sections.SelectMany(s => s.Subsections)
            .SelectMany(s => s.Blocks)
            .SelectMany(Said)
            .Where(t => t.Split(' ').Length > 3)
            .GroupBy(t => t);
        Assert.All(sentences, s => Assert.True(s.Count() <= MostOfOneSentence, $"{s.Count()} times: {s.Key}"));
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void What_is_english_on_another_languages_sheet_is_said_on_both_papers(string candle, string language)
    {
        SafetySheet sheet = Sheet(candle, language);
        Assert.True(language != "en" || sheet.LanguageNote is null);
        Assert.True(language is not ("el" or "hu" or "fi") || sheet.LanguageNote is not null);
        Assert.Contains(
            Start(sheet.LanguageNote ?? sheet.Format),
            AllOf(SafetySheetDocument.Make(sheet, TestLaw.Shop, new Problems())!.Pages[0]),
            StringComparison.Ordinal
        );
        Assert.Contains(
            Start(sheet.Languages.Of(ProductInformationDocument.Picked) ?? sheet.Format),
            AllOf(ProductInformationDocument.Make(sheet, TestLaw.Shop, new Problems())!.Pages[0]),
            StringComparison.Ordinal
        );
    }

    private static string Start(string text) => string.Join(' ', text.Split(' ').Take(5));

    // The law's texts are printed as they stand there.
    private static bool IsLaw(string text, string language) =>
        TestLaw.Lawbook.FindLanguage(language) is { } own
        && own.Official.Values.Concat(own.Printed.Values).Any(s => s.Contains(text.Trim(), StringComparison.Ordinal));

    private static string AllOf(Scene page) => string.Join(' ', Texts(page).Select(t => t.Shaped.Text.Trim()));

    private static IEnumerable<string> Said(SheetBlock block) =>
        block switch
        {
            SheetText text => [text.Text],
            SheetTable table => table.Rows.SelectMany(r => r.Skip(1)),
            _ => [],
        };

    private static IEnumerable<TextItem> Texts(Scene page) => page.Items.SelectMany(i => i.All).OfType<TextItem>();

    private static IReadOnlyList<Scene> Pages(string candle, string language) =>
        SafetySheetDocument.Make(Sheet(candle, language), TestLaw.Shop, new Problems())!.Pages;

    private static SafetySheet Sheet(string candle, string language)
    {
        Assessment a = TestLaw.Demo($"candles/{candle}.yaml");
        Language of = TestLaw.Lawbook.FindLanguage(language)!;
        return SafetySheetMaker.Make(a, of, TestLaw.Lawbook, 1, new Problems())!;
    }

    [GeneratedRegex(@"\p{Ll}'\p{Ll}")]
    private static partial Regex Straight();
}

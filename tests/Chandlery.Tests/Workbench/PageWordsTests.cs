using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Chandlery.Tests.Support;
using Chandlery.Workbench.Forms;
using Microsoft.Playwright;

namespace Chandlery.Tests.Workbench;

/// <summary>The page's own sentences in its languages.</summary>
public sealed partial class PageWordsTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    private static readonly string PageFolder = Path.Combine(TestLaw.Repository, "src", "Chandlery.Workbench", "page");
    private static readonly string WordsFolder = Path.Combine(TestLaw.Repository, "data", "page");

    public static TheoryData<string> Languages =>
        [
            .. Directory
                .GetFiles(WordsFolder)
                .Select(f => Path.GetFileNameWithoutExtension(f)!)
                .Where(l => l != "en")
                .Order(StringComparer.Ordinal),
        ];

    [Theory]
    [MemberData(nameof(Languages))]
    public void Every_sentence_of_the_page_is_told_with_the_same_figures_and_names(string language)
    {
        Dictionary<string, string> words = FormValues
            .Of(File.ReadAllText(Path.Combine(WordsFolder, language + ".yaml")))!
            .ToDictionary(w => w.Key, w => w.Value!.GetValue<string>());
        IReadOnlySet<string> sentences = Sentences();
        Assert.InRange(sentences.Count, 300, 2000);
        Assert.Empty(sentences.Where(s => !words.ContainsKey(s)).Order(StringComparer.Ordinal));
        Assert.Empty(words.Where(w => !Parts(w.Key).SequenceEqual(Parts(w.Value))).Select(w => w.Key));
    }

    [Theory]
    [MemberData(nameof(Languages))]
    public void No_word_has_a_typewriters_apostrophe(string language)
    {
        string[] texts =
        [
            .. new[] { WordsFolder, Path.Combine(TestLaw.Repository, "data", "told") }.SelectMany(folder =>
                Texts(FormValues.Of(File.ReadAllText(Path.Combine(folder, language + ".yaml"))))
            ),
        ];
        Assert.InRange(texts.Length, 1000, 10_000);
        Assert.DoesNotContain(texts, t => TypewritersApostrophe().IsMatch(t));
    }

    private static IEnumerable<string> Texts(JsonNode? node) =>
        node switch
        {
            JsonObject map => map.SelectMany(field => Texts(field.Value)),
            JsonArray list => list.SelectMany(Texts),
            JsonValue value => [value.ToString()],
            _ => [],
        };

    private static IEnumerable<string> Parts(string sentence) =>
        Part().Matches(sentence).Select(m => m.Value).Order(StringComparer.Ordinal);

    /// <summary>What the scripts hand to t() and count(), and what stands on lines that say so.</summary>
    private static HashSet<string> Sentences()
    {
        var found = new HashSet<string>(StringComparer.Ordinal);
        foreach (string script in Directory.GetFiles(PageFolder, "*.js"))
        {
            string text = File.ReadAllText(script);
            found.UnionWith(Told().Matches(text).Select(m => m.Groups[1].Value));
            found.UnionWith(ToldEither().Matches(text).SelectMany(m => new[] { m.Groups[1].Value, m.Groups[2].Value }));
            found.UnionWith(Counted().Matches(text).SelectMany(m => new[] { m.Groups[1].Value, m.Groups[2].Value }));
            found.UnionWith(
                text.Split('\n')
                    .Where(l => l.EndsWith("// told by t()", StringComparison.Ordinal))
                    .SelectMany(l => Literal().Matches(l).Select(m => m.Groups[1].Value))
                    .Where(s => char.IsUpper(s[0]) || s.Contains(' ', StringComparison.Ordinal))
            );
        }

        return [.. found.Select(s => JsonSerializer.Deserialize<string>($"\"{s}\"")!)];
    }

    [Theory]
    [InlineData("de", "Darf")]
    [InlineData("fr", "Peut")]
    [InlineData("es", "Se puede")]
    public async Task The_page_speaks_the_language_that_is_chosen(string language, string begins)
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/harbour-bowl");
        await visit.Page.Locator("#page-language").SelectOptionAsync(language);
        await Assertions.Expect(visit.Page.Locator("html")).ToHaveAttributeAsync("lang", language);
        await Assertions.Expect(visit.Sentence).ToContainTextAsync(begins);
        Assert.True(await visit.Page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"));
        await visit.Picture("language-" + language);
        Assert.Empty(visit.Trouble);
    }

    // Batches have no buttons in their rows, and the buttons of candles are as wide as their words.
    [Theory]
    [InlineData("en")]
    [InlineData("de")]
    [InlineData("fr")]
    [InlineData("es")]
    public async Task Candles_and_batches_stand_in_the_same_columns(string language)
    {
        await using Visit visit = await browser.Open(width: 1000);
        await visit.Go("");
        await visit.Page.Locator("#page-language").SelectOptionAsync(language);
        await Assertions.Expect(visit.Page.Locator("html")).ToHaveAttributeAsync("lang", language);
        await Assertions.Expect(visit.Page.Locator(".one").First).ToBeVisibleAsync();
        int[] places = await visit.Page.EvaluateAsync<int[]>(
            "[...new Set([...document.querySelectorAll('.one')].map((r) => Math.round(r.children[1].getBoundingClientRect().left)))]"
        );
        Assert.Single(places);
    }

    [GeneratedRegex("""\p{L}'\p{L}""")]
    private static partial Regex TypewritersApostrophe();

    [GeneratedRegex(@"\{\w+\}")]
    private static partial Regex Part();

    [GeneratedRegex(@"\bt\(\s*""((?:[^""\\]|\\.)*)""")]
    private static partial Regex Told();

    [GeneratedRegex(@"\bt\((?:[^()""]|\([^()]*\)|"""")*\?\s*""((?:[^""\\]|\\.)*)""\s*:\s*""((?:[^""\\]|\\.)*)""")]
    private static partial Regex ToldEither();

    [GeneratedRegex(@"\bcount\([^""]*?""((?:[^""\\]|\\.)*)"",\s*""((?:[^""\\]|\\.)*)""")]
    private static partial Regex Counted();

    [GeneratedRegex(@"""((?:[^""\\]|\\.)+)""")]
    private static partial Regex Literal();
}

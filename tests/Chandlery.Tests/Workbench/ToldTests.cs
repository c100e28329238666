using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Chandlery.Tests.Support;
using Chandlery.Workbench.Forms;
using Microsoft.Playwright;

namespace Chandlery.Tests.Workbench;

/// <summary>What the program says, told in the page's languages.</summary>
public sealed partial class ToldTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    private static readonly string Folder = Path.Combine(TestLaw.Repository, "data", "told");

    /// <summary>What can reach the page: results, problems, fields, doubts of drafts, why there is no label.</summary>
    private static readonly string[] Reach =
    [
        "Chandlery.Core/Assessed",
        "Chandlery.Core/Classified",
        "Chandlery.Core/Composed",
        "Chandlery.Core/Declared",
        "Chandlery.Core/Judged",
        "Chandlery.Core/Labelled",
        "Chandlery.Core/Limits",
        "Chandlery.Core/SafetyFiles/Duties",
        "Chandlery.Core/SafetyFiles/Listings",
        "Chandlery.Core/SafetyFiles/Recalls",
        "Chandlery.Core/SafetyFiles/Tests",
        "Chandlery.Yaml",
        "Chandlery.Files",
        "Chandlery.Intake/Drafts",
        "Chandlery.Intake/Pages",
        "Chandlery.Intake/Tables",
        "Chandlery.Paper/Papers/Labels",
        "Chandlery.Workbench",
    ];

    /// <summary>Of those, what is said at the command line alone, to other programs, or before the page has a language.</summary>
    private static readonly string[] Elsewhere =
    [
        "Chandlery.Core/Assessed/Tracer.cs",
        "Chandlery.Core/Assessed/SetFinder.cs",
        "Chandlery.Core/Assessed/Reports/",
        "Chandlery.Core/Declared/Reading/SchemaWriter.cs",
        "Chandlery.Files/Candle",
        "Chandlery.Files/Csv",
        "Chandlery.Files/AtomicFile.cs",
        "Chandlery.Files/ShippedFiles.cs",
        "Chandlery.Files/StockShelf.cs",
        "Chandlery.Files/Tesseract.cs",
        "Chandlery.Intake/Pages/PageWire.cs",
        "Chandlery.Workbench/Guard.cs",
        "Chandlery.Workbench/Workroom.cs",
        "Chandlery.Workbench/Endpoints/SymbolEndpoint.cs",
    ];

    /// <summary>English tells only what is said otherwise on the page than at the command line.</summary>
    private const string English = "en";

    private static IEnumerable<string> All =>
        Directory.GetFiles(Folder).Select(f => Path.GetFileNameWithoutExtension(f)!).Order(StringComparer.Ordinal);

    public static TheoryData<string> Languages => [.. All.Where(l => l != English)];

    private static Dictionary<string, string> Read(string language) =>
        FormValues
            .Of(File.ReadAllText(Path.Combine(Folder, language + ".yaml")))!
            .Where(w => w.Value is JsonValue)
            .ToDictionary(w => w.Key, w => w.Value!.GetValue<string>());

    [Theory]
    [MemberData(nameof(Languages))]
    public void EverySentenceThatCanReachThePageIsTold(string language)
    {
        Dictionary<string, string> told = Read(language);
        Regex[] known = [.. told.Keys.Where(k => k.Contains("{0}", StringComparison.Ordinal)).Select(Pattern)];
        string[] sentences =
        [
            .. ProgramSentences
                .Of(Reach)
                .Where(s => !Elsewhere.Any(e => s.File.StartsWith(e, StringComparison.Ordinal)))
                .Select(s => Filled(s.Text))
                .Where(s => Sentence().IsMatch(s))
                .Concat(OfTheLaw())
                .Distinct(),
        ];
        Assert.InRange(sentences.Length, 500, 3000);
        Assert.Empty(sentences.Where(s => !told.ContainsKey(s) && !known.Any(k => k.IsMatch(s))).Order(StringComparer.Ordinal));
    }

    /// <summary>Sentences of the law's data that become findings.</summary>
    private static IEnumerable<string> OfTheLaw() =>
        TestLaw
            .Lawbook.Editions.SelectMany(e => e.Notices.Select(n => Mark().Replace(n.Says, "X")).Concat(e.NotForPublic.Select(b => b.Says)))
            .Concat(
                TestLaw.Lawbook.Safety.Markets.SelectMany(m =>
                    m.Questions.Select(q => q.Says).Concat(m.Claims.Select(c => c.Says)).Concat(m.Roles.Select(r => r.Says))
                )
            )
            .Concat(TestLaw.Lawbook.Editions.SelectMany(e => e.Refuses.Select(r => r.Because)))
            .Concat(TestLaw.Lawbook.Editions.Where(e => e.IsKnownInPart).SelectMany(e => e.DoesNotCover))
            .Concat(TestLaw.Lawbook.Safety.Duties.SelectMany(d => d.Rows.Select(r => r.Says)));

    [Theory]
    [MemberData(nameof(Languages))]
    public void WhatIsToldHasTheSameFiguresAndNamesInIt(string language)
    {
        Dictionary<string, string> told = Read(language);
        Assert.Equal(Read("de").Keys.Order(StringComparer.Ordinal), told.Keys.Order(StringComparer.Ordinal));
        Assert.Empty(told.Where(w => !Numbers(w.Key).SequenceEqual(Numbers(w.Value))).Select(w => w.Key));
        // Which field is meant stays: the page puts its own name for it in its place.
        Dictionary<string, string> english = Read(English);
        Assert.Empty(told.Where(w => !english.ContainsKey(w.Key) && !Quoted(w.Key).SequenceEqual(Quoted(w.Value))).Select(w => w.Key));
    }

    [Fact]
    public void OnThePageNobodyIsToldOfACommandOrOfAFileThatDeclares()
    {
        string[] keys = [.. Read("de").Keys];
        Dictionary<string, string> english = Read(English);
        Assert.Empty(english.Keys.Except(keys));
        Assert.Empty(english.Where(w => !Numbers(w.Key).SequenceEqual(Numbers(w.Value))).Select(w => w.Key));
        Assert.DoesNotContain(keys, k => AtTheCommandLine().IsMatch(k) && !english.ContainsKey(k));
        Assert.DoesNotContain(All.SelectMany(l => Read(l).Values), v => AtTheCommandLine().IsMatch(v));
    }

    // Of a file that does not say what it declares, only somebody is told who wrote it by hand.
    [GeneratedRegex(@"chandlery |(?<![\w-])--[a-z]|\.yaml\b|'declares: (?:wax|base|maker|test|candle)'")]
    private static partial Regex AtTheCommandLine();

    [Fact]
    public void NothingIsToldThatTheProgramDoesNotSay()
    {
        string source = string.Join(
            '\n',
            ProgramSentences
                .Of(
                    "Chandlery.Core",
                    "Chandlery.Yaml",
                    "Chandlery.Files",
                    "Chandlery.Intake",
                    "Chandlery.Paper",
                    "Chandlery.Register",
                    "Chandlery.Workbench"
                )
                .Select(s => s.Text)
        );
        string data = Blank()
            .Replace(
                string.Join(
                    '\n',
                    new[] { "law", "product-safety", "substances", "stocks" }
                        .SelectMany(f =>
                            Directory.GetFiles(Path.Combine(TestLaw.Repository, "data", f), "*.yaml", SearchOption.AllDirectories)
                        )
                        .Append(Path.Combine(TestLaw.Repository, "src", "Chandlery.Workbench", "page", "ask.js"))
                        .Select(File.ReadAllText)
                ),
                " "
            );
        string[] unsaid =
        [
            .. Read("de")
                .Keys.Select(Surest)
                .Where(s => !source.Contains(s, StringComparison.Ordinal) && !data.Contains(s, StringComparison.Ordinal)),
        ];
        Assert.Empty(unsaid);
    }

    // The longest piece of a sentence that does not change.
    private static string Surest(string key) =>
        Number().Split(key).Select(p => p.Trim(' ', '(', ')', ':', ';', ',', '.')).MaxBy(p => p.Length)!;

    [Theory]
    [InlineData("de", "harbour-bowl")]
    [InlineData("fr", "dune-reeds")]
    [InlineData("es", "fig-tin")]
    public async Task ThePageLeavesNoSentenceOfTheProgramInEnglish(string language, string candle)
    {
        await using Visit visit = await browser.Open();
        await visit.Go("#/candle/" + candle);
        await visit.Page.Locator("#page-language").SelectOptionAsync(language);
        await Assertions.Expect(visit.Page.Locator("html")).ToHaveAttributeAsync("lang", language);
        await Assertions.Expect(visit.Page.Locator("#follows h2")).ToBeVisibleAsync();
        string[] english = await visit.Page.EvaluateAsync<string[]>(
            """
            async (id) => {
              const { askJson } = await import("./ask.js");
              const desk = await askJson("/api/desk", { id });
              const shown = document.getElementById("follows").textContent;
              const said = desk.assessments.flatMap((a) => [...a.findings.map((f) => f.what), ...a.limits.flatMap((l) => [l.name, l.explanation]), ...a.classes.map((c) => c.working.sentence), ...Object.values(a.statements).flat().map((s) => s.because)]);
              if (said.length < 5) throw new Error("nothing was said");
              return said.filter((s) => s.length > 3 && shown.includes(s));
            }
            """,
            candle
        );
        Assert.Empty(english);
    }

    private static Regex Pattern(string key) =>
        new(
            "^" + string.Join(".*?", Number().Split(key).Select(Regex.Escape)) + "$",
            RegexOptions.Singleline | RegexOptions.CultureInvariant
        );

    private static string Filled(string text) => Holes().Replace(text, "X");

    private static IEnumerable<string> Numbers(string text) => Number().Matches(text).Select(m => m.Value).Order(StringComparer.Ordinal);

    private static IEnumerable<string> Quoted(string text) => Field().Matches(text).Select(m => m.Value).Order(StringComparer.Ordinal);

    [GeneratedRegex(@"\{\d+\}")]
    private static partial Regex Number();

    [GeneratedRegex(@"\{\w+\}")]
    private static partial Regex Mark();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blank();

    [GeneratedRegex("\u0001+")]
    private static partial Regex Holes();

    [GeneratedRegex(@"'[a-z]+[A-Z][A-Za-z]*")]
    private static partial Regex Field();

    [GeneratedRegex(@"^[A-Z](?=[^\n]*[a-z]{3})[^\n]* [^\n]*[.?]$")]
    private static partial Regex Sentence();
}

using System.Text.Json;
using Chandlery.Cli;
using Chandlery.Core.Asked.Comparisons;
using Chandlery.Tests.Paper;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Cli;

public class CliTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("chandlery-test-").FullName;

    public void Dispose()
    {
        Directory.Delete(folder, recursive: true);
        GC.SuppressFinalize(this);
    }

    private static (int Code, string Output, string Errors) Run(params string[] arguments) => Command.Run(arguments);

    private static string Sheet(string file) => Path.Combine(TestLaw.Repository, "tests", "Chandlery.Sheets", "pdf", file);

    // Also of the program compiled ahead of time, from which code that nobody seems to use is left out.
    [Theory]
    [InlineData("'fig' | string.upcase", "FIG")]
    [InlineData("[1, 2] | array.size", "2")]
    [InlineData("1.46 | math.round 1", "1.5")]
    [InlineData("'a1' | regex.replace '[0-9]' 'b'", "ab")]
    public void A_makers_own_template_may_use_the_librarys_functions(string uses, string printed)
    {
        string templates = Path.Combine(folder, "templates");
        Directory.CreateDirectory(templates);
        string card = File.ReadAllText(Path.Combine(TestLaw.Repository, "templates", "burn-card.sbn"));
        File.WriteAllText(
            Path.Combine(templates, "burn-card.sbn"),
            card.Replace("</paper>", $"<p>{{{{ {uses} }}}}</p></paper>", StringComparison.Ordinal)
        );
        string tin = Path.Combine(TestLaw.DemoFolder, "candles", "fig-tin.yaml");
        (int code, _, string errors) = Run("card", tin, "--templates", templates, "--out", folder);
        Assert.True(code == ExitCode.Fine, errors);
        using PdfReader pdf = new(File.ReadAllBytes(Directory.GetFiles(folder, "*.pdf").Single()));
        Assert.Contains(printed, pdf.Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void DraftReadsAPdfInAProcessOfItsOwnAndNeverOverwrites()
    {
        string target = Path.Combine(folder, "oil.yaml");
        string pages = Path.Combine(folder, "pages");
        (int code, string output, string errors) = Run("draft", Sheet("dune.latex-open-en.pdf"), "--out", target, "--review-pages", pages);
        Assert.Equal("", errors);
        bool isFine = output.Contains("To review (0)", StringComparison.Ordinal);
        Assert.Equal(isFine ? ExitCode.Fine : ExitCode.StopsSale, code);
        Assert.Contains("7 ingredients drafted", output, StringComparison.Ordinal);
        Assert.NotEmpty(Directory.GetFiles(pages, "*.png"));
        string draft = File.ReadAllText(target);
        Assert.Contains("reviewed: no", draft, StringComparison.Ordinal);

        (code, _, errors) = Run("draft", Sheet("dune.latex-open-en.pdf"), "--out", target);
        Assert.Equal(ExitCode.BadInput, code);
        Assert.Contains("--replace", errors, StringComparison.Ordinal);
        Assert.Equal(draft, File.ReadAllText(target));
    }

    [Fact]
    public void DraftOfRubbishWritesNothing()
    {
        string rubbish = Path.Combine(folder, "rubbish.pdf");
        File.WriteAllText(rubbish, "%PDF-1.7\n1 0 obj<</Length 99999999999>>stream");
        (int code, _, string errors) = Run("draft", rubbish, "--out", Path.Combine(folder, "oil.yaml"));
        Assert.Equal(ExitCode.BadInput, code);
        Assert.Contains("rubbish.pdf: ", errors, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", errors, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(folder, "oil.yaml")));
    }

    private static string Demo(string file) => Path.Combine(TestLaw.DemoFolder, file);

    [Theory]
    [InlineData("candles/harbour-bowl.yaml", 0)]
    [InlineData("candles/fig-tin.yaml", 0)]
    [InlineData("candles/slate-jar.yaml", 0)]
    [InlineData("../example-stopped/candles/storm-jar.yaml", 1)]
    [InlineData("candles/no-such.yaml", 2)]
    [InlineData("oils/fig-leaf.yaml", 2)]
    public void ExitCodes(string file, int expected) => Assert.Equal(expected, Run("assess", Demo(file)).Code);

    [Theory]
    [InlineData("harbour-bowl")]
    [InlineData("fig-tin")]
    [InlineData("slate-jar")]
    [InlineData("storm-jar")]
    public void TheJsonKeepsItsContract(string candle)
    {
        string json = Run(
            "assess",
            candle == "storm-jar" ? Path.Combine(TestLaw.StoppedFolder, "candles", "storm-jar.yaml") : Demo($"candles/{candle}.yaml"),
            "--json"
        ).Output;
        using JsonDocument document = JsonDocument.Parse(json);
        Schema.Fulfils("assessment", document.RootElement);
        JsonElement root = document.RootElement;
        Assert.Equal(candle, root.GetProperty("candle").GetString());
        Assert.Equal("eu-clp", root.GetProperty("edition").GetString());
        double high = root.GetProperty("composition").EnumerateArray().Sum(i => i.GetProperty("lowPercent").GetDouble());
        Assert.InRange(high, 90, 100.0000001);
    }

    [Fact]
    public void AFolderAnswersWithAnArray()
    {
        using JsonDocument document = JsonDocument.Parse(Run("assess", TestLaw.DemoFolder, "--json").Output);
        Schema.Fulfils("assessment", document.RootElement);
        int all = new[] { "candles", "batches" }.Sum(f => Directory.GetFiles(Path.Combine(TestLaw.DemoFolder, f), "*.yaml").Length);
        Assert.Equal(all, document.RootElement.GetArrayLength());
    }

    [Fact]
    public void TheDemoEndsInThreeLegalResults()
    {
        JsonElement Assess(string candle) => JsonDocument.Parse(Run("assess", Demo($"candles/{candle}.yaml"), "--json").Output).RootElement;
        JsonElement bowl = Assess("harbour-bowl");
        Assert.Equal("Warning", bowl.GetProperty("signalWord").GetString());
        Assert.Equal("GHS07", bowl.GetProperty("pictograms")[0].GetString());
        JsonElement tin = Assess("fig-tin");
        Assert.Equal("EUH208", tin.GetProperty("statements").GetProperty("supplemental")[0].GetProperty("code").GetString());
        Assert.Equal(0, tin.GetProperty("classes").GetArrayLength());
        JsonElement jar = Assess("slate-jar");
        Assert.Equal(0, jar.GetProperty("statements").GetProperty("supplemental").GetArrayLength());
        Assert.Equal(0, jar.GetProperty("classes").GetArrayLength());
    }

    [Theory]
    [InlineData("H317", "Table 3.4.5")]
    [InlineData("Aquatic Chronic", "Table 4.1.2")]
    [InlineData("H315", "no class is reached")]
    [InlineData("P501", "CLP Art. 28(2)")]
    [InlineData("GHS07", "called for by Skin Sens. 1")]
    [InlineData("5989-27-5", "Sweet Orange Essential Oil")]
    [InlineData("load", "second pour")]
    [InlineData("flash point", "margin 2")]
    public void TraceExplains(string asked, string expected)
    {
        (int code, string output, _) = Run("trace", Demo("candles/harbour-bowl.yaml"), asked);
        Assert.Equal(0, code);
        Assert.Contains(expected, output, StringComparison.Ordinal);
    }

    [Fact]
    public void TraceSaysWhatCanBeAsked()
    {
        (int code, _, string errors) = Run("trace", Demo("candles/harbour-bowl.yaml"), "H371x");
        Assert.Equal(2, code);
        Assert.Contains("You can ask for", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void TheDossierIsComplete()
    {
        (int code, string output, string errors) = Run("dossier", TestLaw.DemoFolder, "--out", folder);
        Assert.Equal(0, code);
        Assert.DoesNotContain("no label", errors, StringComparison.Ordinal);
        foreach (string candle in new[] { "harbour-bowl", "fig-tin", "slate-jar", "hb-2611" })
        {
            Assert.True(File.Exists(Path.Combine(folder, candle, candle + "-label.pdf")));
            Assert.True(File.Exists(Path.Combine(folder, candle, candle + "-burn-card.pdf")));
            Assert.True(File.Exists(Path.Combine(folder, candle, "assessment.json")));
        }

        Assert.All(output.Split('\n', StringSplitOptions.RemoveEmptyEntries), line => Assert.True(File.Exists(line.Trim())));
        Assert.Empty(Directory.EnumerateFiles(folder, "*.tmp", SearchOption.AllDirectories));
    }

    [Fact]
    public void ACandleThatMustNotBeSoldGetsNoLabel()
    {
        (int code, _, string errors) = Run("dossier", TestLaw.StoppedFolder, "--out", folder);
        Assert.Equal(1, code);
        Assert.Contains("storm-jar: no label", errors, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(folder, "storm-jar", "assessment.json")));
        Assert.False(File.Exists(Path.Combine(folder, "storm-jar", "storm-jar-label.pdf")));
    }

    [NeedsPublishedFact]
    public void ThePublishedProgramWritesTheSameDossierByteForByte()
    {
        string here = Path.Combine(folder, "here");
        string there = Path.Combine(folder, "there");
        Command.RunHere("dossier", TestLaw.DemoFolder, "--out", here);
        Command.Run("dossier", TestLaw.DemoFolder, "--out", there);
        string[] files = [.. Files(here)];
        Assert.NotEmpty(files);
        Assert.Equal(files, Files(there));
        Assert.All(files, f => Assert.Equal(File.ReadAllBytes(Path.Combine(here, f)), File.ReadAllBytes(Path.Combine(there, f))));

        static IEnumerable<string> Files(string root) =>
            Directory
                .EnumerateFiles(root, "*", SearchOption.AllDirectories)
                .Select(f => Path.GetRelativePath(root, f))
                .Order(StringComparer.Ordinal);
    }

    [Theory]
    [InlineData("catalogue")]
    [InlineData("catalogue", "--json")]
    public void TheCatalogueHoldsEveryCandleAndThenTheBatches(params string[] command)
    {
        (int code, string output, string errors) = Run([.. command, TestLaw.DemoFolder]);
        Assert.Equal(0, code);
        Assert.Equal("", errors);
        string[] ids = ["fig-tin", "harbour-bowl", "slate-jar", "hb-2611"];
        int[] places = [.. ids.Select(id => output.IndexOf(id, StringComparison.Ordinal))];
        Assert.All(places, p => Assert.True(p > 0));
        Assert.Equal(places.Order(), places);
    }

    [Theory]
    [InlineData("batches/hb-2611.yaml", "candle: harbour-bowl", "candle: harbour-bowel", "Did you mean 'harbour-bowl'?")]
    [InlineData("candles/fig-tin.yaml", "wax: soy-flake", "wax: soy-flaky", "Did you mean 'soy-flake'?")]
    [InlineData("candles/fig-tin.yaml", "declares: candle", "declares: candel", "Did you mean 'candle'?")]
    [InlineData("oils/fig-leaf.yaml", "106-22-9", "106-22-8", "check digit")]
    public void TheCatalogueSaysWhatIsWrongAndShowsTheRest(string file, string old, string wrong, string said)
    {
        string copy = Path.Combine(folder, "in");
        CopyFolder(TestLaw.DemoFolder, copy);
        string text = File.ReadAllText(Path.Combine(copy, file));
        Assert.Contains(old, text, StringComparison.Ordinal);
        File.WriteAllText(Path.Combine(copy, file), text.Replace(old, wrong, StringComparison.Ordinal));
        (int code, string output, string errors) = Run("catalogue", copy);
        Assert.Equal(2, code);
        Assert.Contains(said, errors, StringComparison.Ordinal);
        Assert.Contains("slate-jar", output, StringComparison.Ordinal);
    }

    [Fact]
    public void TwoCandlesOfOneNameAreAProblemOfTheCatalogue()
    {
        string copy = Path.Combine(folder, "in");
        CopyFolder(TestLaw.DemoFolder, copy);
        Directory.CreateDirectory(Path.Combine(copy, "more"));
        File.Copy(Path.Combine(copy, "candles", "fig-tin.yaml"), Path.Combine(copy, "more", "fig-tin.yaml"));
        (int code, _, string errors) = Run("catalogue", copy);
        Assert.Equal(2, code);
        Assert.Contains("There are two files named 'fig-tin' of this kind", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void AFolderOfTheUsersIsCheckedWholeAndNotOnlyTheLanguagesOfTheLabel()
    {
        string data = Path.Combine(folder, "data");
        Directory.CreateDirectory(Path.Combine(data, "languages", "el"));
        File.WriteAllText(Path.Combine(data, "languages", "el", "words.yaml"), "language: el\nwords: here\n");
        (int code, _, string errors) = Run("assess", Demo("candles/slate-jar.yaml"), "--data", data);
        Assert.Equal(2, code);
        Assert.Contains("'words' must be a group of fields", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void TheSchemasAreWrittenAsTheyLieInTheData()
    {
        Assert.Equal(0, Run("schemas", "--out", folder).Code);
        string[] written = Directory.GetFiles(folder);
        Assert.Equal(Directory.GetFiles(Schema.Folder).Length, written.Length);
        Assert.All(written, f => Assert.Equal(File.ReadAllText(Path.Combine(Schema.Folder, Path.GetFileName(f))), File.ReadAllText(f)));
    }

    [Fact]
    public void NothingIsWrittenOfACandleThatNeedsAWrongFile()
    {
        string oils = Path.Combine(folder, "in");
        CopyFolder(TestLaw.DemoFolder, oils);
        string oil = Path.Combine(oils, "oils", "fig-leaf.yaml");
        File.WriteAllText(oil, File.ReadAllText(oil).Replace("106-22-9", "106-22-8", StringComparison.Ordinal));
        (int code, _, string errors) = Run("dossier", oils, "--out", Path.Combine(folder, "out"));
        Assert.Equal(2, code);
        Assert.Contains("fig-leaf.yaml:11:", errors, StringComparison.Ordinal);
        Assert.Contains("check digit", errors, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(folder, "out", "fig-tin")));
        Assert.True(File.Exists(Path.Combine(folder, "out", "slate-jar", "slate-jar-label.pdf")));
        Assert.DoesNotContain("nothing was written", errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("assess", "x", "--as-of", "soon")]
    [InlineData("label", "x", "--format", "docx")]
    [InlineData("label", "x", "--dpi", "5")]
    [InlineData("nonsense")]
    public void AWrongCommandLineIsBadInput(params string[] arguments) => Assert.Equal(2, Run(arguments).Code);

    [Fact]
    public void AFaultOfTheProgramIsSaidInOneLine()
    {
        string said = LastResort.Say(Assert.Throws<InvalidOperationException>(() => TestLaw.Lawbook.Edition("of the moon")));
        Assert.DoesNotContain('\n', said);
        Assert.Contains("InvalidOperationException at Chandlery.Core.Law.Lawbook.Edition(", said, StringComparison.Ordinal);
        Assert.Contains("Please report this line", said, StringComparison.Ordinal);
    }

    [Fact]
    public void APlaceWithoutAnEditionListsThoseThereAre()
    {
        (int code, _, string errors) = Run("assess", Demo("candles/slate-jar.yaml"), "--place", "XX");
        Assert.Equal(2, code);
        Assert.Contains("Known places: AT (Austria), BE (Belgium)", errors, StringComparison.Ordinal);
    }

    private static void CopyFolder(string from, string to)
    {
        foreach (string file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            string target = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }
    }
}

using System.Net.Http.Json;
using System.Text.Json;
using System.Text.RegularExpressions;
using Chandlery.Cli;
using Chandlery.Paper.Papers;
using Chandlery.Register;
using Chandlery.Tests.Support;
using Chandlery.Workbench;
using Chandlery.Yaml;

namespace Chandlery.Tests.Paper;

/// <summary>What is in the list of papers is everywhere, and nothing else knows the papers.</summary>
public sealed class PaperListTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("chandlery-papers-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private static PaperList With(PaperKind paper) => new([.. PaperList.Own.All, paper]);

    private static (int Code, string Output, string Errors) Run(PaperList papers, params string[] arguments)
    {
        var output = new StringWriter();
        var errors = new StringWriter();
        System.CommandLine.ParseResult parse = CommandTree.Build(papers).Parse(arguments);
        parse.InvocationConfiguration.Output = output;
        parse.InvocationConfiguration.Error = errors;
        return (parse.Invoke(parse.InvocationConfiguration), output.ToString(), errors.ToString());
    }

    private static string Demo(string candle) => Path.Combine(TestLaw.DemoFolder, "candles", candle + ".yaml");

    [Fact]
    public void APaperOfTheListStandsInTheDossierAndInEveryExplanation()
    {
        PaperList papers = With(new NotePaper());
        (int code, _, string errors) = Run(papers, "dossier", Demo("fig-tin"), "--out", folder);
        Assert.Equal(ExitCode.Fine, code);
        Assert.True(File.Exists(Path.Combine(folder, "fig-tin", "fig-tin-thank-you.pdf")), errors);
        Assert.True(File.Exists(Path.Combine(folder, "fig-tin", "fig-tin-thank-you.svg")));
        Assert.Contains("| `thank-you` | Thank-you note |", Run(papers, "reference").Output, StringComparison.Ordinal);
        Assert.Contains("thank-you note", CommandTree.Build(papers).Subcommands.Single(c => c.Name == "dossier").Description);
        Assert.Contains(
            "thank-you note",
            CommandTree
                .Build(papers)
                .Subcommands.Single(c => c.Name == "register")
                .Subcommands.Single(c => c.Name == "add")
                .Options.Single(o => o.Name == "--documents")
                .Description
        );
    }

    [Theory]
    [InlineData(true, ExitCode.StopsSale, "fig-tin: no thank-you note: nobody has thanked yet.")]
    [InlineData(false, ExitCode.Fine, "fig-tin: no thank-you note yet: nobody has thanked yet.")]
    public void AMissingPaperIsSaidAndKeepsNoOtherFromBeingWritten(bool due, int expected, string said)
    {
        (int code, _, string errors) = Run(With(new NotePaper(due)), "dossier", Demo("fig-tin"), "--out", folder);
        Assert.Equal(expected, code);
        Assert.Contains(said, errors, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(folder, "fig-tin", "fig-tin-label.pdf")));
        Assert.True(File.Exists(Path.Combine(folder, "fig-tin", "fig-tin-safety-sheet.pdf")));
    }

    [Theory]
    [InlineData("product-information.sbn", "fig-tin-safety-sheet.pdf", "fig-tin-product-information.pdf", "no product information")]
    [InlineData("safety-sheet.sbn", "fig-tin-product-information.pdf", "fig-tin-safety-sheet.pdf", "no safety data sheet")]
    public void EveryPaperStandsAlone(string broken, string written, string missing, string said)
    {
        string templates = Directory.CreateDirectory(Path.Combine(folder, "templates")).FullName;
        File.WriteAllText(Path.Combine(templates, broken), "\n{{ nmae }}");
        string outFolder = Path.Combine(folder, "out");
        foreach ((string command, string place) in new[] { ("safety-sheet", ""), ("dossier", "fig-tin") })
        {
            (int code, _, string errors) = Run(
                PaperList.Own,
                command,
                Demo("fig-tin"),
                "--templates",
                templates,
                "--out",
                Path.Combine(outFolder, command)
            );
            Assert.Equal(ExitCode.StopsSale, code);
            Assert.True(File.Exists(Path.Combine(outFolder, command, place, written)), errors);
            Assert.False(File.Exists(Path.Combine(outFolder, command, place, missing)));
            Assert.Contains($"fig-tin: {said}: templates/{broken}:2:4: ", errors, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void WhatNothingCouldBeMadeOfIsBadInput()
    {
        string templates = Directory.CreateDirectory(Path.Combine(folder, "templates")).FullName;
        File.WriteAllText(Path.Combine(templates, "label.sbn"), "{{ nmae }}");
        (int code, _, string errors) = Run(PaperList.Own, "label", Demo("fig-tin"), "--templates", templates, "--out", folder);
        Assert.Equal(ExitCode.BadInput, code);
        Assert.Contains("1 problem; nothing was written.", errors, StringComparison.Ordinal);
    }

    // The check that no command can go around: a label is measured where it is made.
    [Theory]
    [InlineData("label")]
    [InlineData("sheet")]
    [InlineData("dossier")]
    public void ALabelThatLacksWhatTheLawAsksIsNotPrinted(string command)
    {
        string templates = Directory.CreateDirectory(Path.Combine(folder, "templates")).FullName;
        string label = File.ReadAllText(Path.Combine(TestLaw.Repository, "templates", "label.sbn"));
        File.WriteAllText(
            Path.Combine(templates, "label.sbn"),
            label.Replace("{{ text.supplemental }}", "Burn it well.", StringComparison.Ordinal)
        );
        string outFolder = Path.Combine(folder, "out");
        string[] stock = command == "sheet" ? ["--stock", "a4-2x4"] : [];
        (int code, _, string errors) = Run(
            PaperList.Own,
            [command, Demo("fig-tin"), "--templates", templates, "--out", outFolder, .. stock]
        );
        Assert.Equal(ExitCode.StopsSale, code);
        Assert.Contains("fig-tin: no label: measured in its own PDF it does not hold: ", errors, StringComparison.Ordinal);
        Assert.False(
            Directory.Exists(outFolder)
                && Directory
                    .EnumerateFiles(outFolder, "*", SearchOption.AllDirectories)
                    .Any(f => f.Contains("label", StringComparison.Ordinal) || command == "sheet")
        );
    }

    [Fact]
    public void TheLabelsOfTwoEditionsDoNotOverwriteEachOther()
    {
        string demo = Path.Combine(folder, "in");
        CopyDemo(demo);
        string tin = Path.Combine(demo, "candles", "fig-tin.yaml");
        File.WriteAllText(tin, File.ReadAllText(tin).Replace("soldIn: [IE]", "soldIn: [IE, US]", StringComparison.Ordinal));
        foreach ((string command, string ending) in new[] { ("label", "label"), ("card", "burn-card") })
        {
            (int code, string output, string errors) = Run(PaperList.Own, command, tin, "--out", Path.Combine(folder, command));
            Assert.True(code == ExitCode.Fine, errors);
            string[] written = [.. output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => Path.GetFileName(l.Trim()))];
            Assert.Equal([$"eu-clp-fig-tin-{ending}.pdf", $"united-states-fig-tin-{ending}.pdf"], written.Order());
        }
    }

    [Fact]
    public async Task ThePageOffersThePapersOfTheListInEachLanguageAndShowsTheirWarnings()
    {
        CopyDemo(folder);
        var problems = new Problems();
        PaperList papers = With(new NotePaper());
        await using WorkbenchServer server = await WorkbenchServer.Start(Workroom.Open(folder, papers, null, problems)!, 0);
        using var client = new HttpClient { BaseAddress = new Uri(server.Address) };
        client.DefaultRequestHeaders.Add("X-Workbench", "1");
        await client.GetAsync(server.WayIn);
        async Task<JsonElement> Ask(string path, object body) =>
            (await (await client.PostAsJsonAsync(path, body)).Content.ReadFromJsonAsync<JsonElement>())!;

        JsonElement desk = await Ask("/api/desk", new { id = "harbour-bowl" });
        List<JsonElement> offered = [.. desk.GetProperty("papers").EnumerateArray()];
        Assert.Equal(papers.All.Select(p => (p.Id, p.Title)), offered.Select(o => (Text(o, "id"), Text(o, "title"))));
        Assert.Equal(
            ["en", "de"],
            offered
                .Single(o => Text(o, "id") == "safety-sheet")
                .GetProperty("languages")
                .GetProperty("eu-clp")
                .EnumerateArray()
                .Select(l => Text(l, "code"))
        );
        Assert.Empty(offered.Single(o => Text(o, "id") == "thank-you").GetProperty("languages").GetProperty("eu-clp").EnumerateArray());

        JsonElement german = await Ask("/api/preview", new { id = "harbour-bowl", paper = new { kind = "safety-sheet", language = "de" } });
        Assert.Contains(
            "Teile dieser Unterabschnitte sind nicht in dieser Sprache",
            german.GetProperty("warnings").ToString(),
            StringComparison.Ordinal
        );
        JsonElement english = await Ask(
            "/api/preview",
            new { id = "harbour-bowl", paper = new { kind = "safety-sheet", language = "en" } }
        );
        Assert.DoesNotContain("Teile dieser", english.GetProperty("warnings").ToString(), StringComparison.Ordinal);
        Assert.Contains("Not assessed: ", english.GetProperty("warnings").ToString(), StringComparison.Ordinal);
        JsonElement note = await Ask("/api/preview", new { id = "harbour-bowl", paper = new { kind = "thank-you" } });
        Assert.Equal("[\"Sign it.\"]", note.GetProperty("warnings").ToString());
        Assert.Equal(1, note.GetProperty("pages").GetArrayLength());

        const string Storm = "candles/storm-jar.yaml";
        File.Copy(Path.Combine(TestLaw.StoppedFolder, Storm), Path.Combine(folder, Storm));
        JsonElement stopped = await Ask("/api/preview", new { id = "storm-jar", paper = new { kind = "safety-sheet" } });
        Assert.Equal("Safety data sheet not printed: something stops the sale; the assessment says what.", Text(stopped, "whyNot"));
        Assert.Equal(
            "There is no such paper.",
            Text(await Ask("/api/preview", new { id = "fig-tin", paper = new { kind = "pamphlet" } }), "whyNot")
        );

        Assert.Equal(1, (await Ask("/api/enter", new { id = "hb-2611", by = "M. Hale" })).GetProperty("number").GetInt32());
        using RegisterBook register = RegisterFile.OpenToRead(Path.Combine(folder, RegisterWriter.FileName));
        Assert.Equal(
            ["hb-2611-label.pdf", "hb-2611-thank-you.pdf"],
            register.Find(new RegisterQuery()).Single().Content.Documents.Select(d => d.Name)
        );
    }

    private static string Text(JsonElement element, string name) => element.GetProperty(name).GetString()!;

    private static void CopyDemo(string target)
    {
        foreach (string file in Directory.GetFiles(TestLaw.DemoFolder, "*.yaml", SearchOption.AllDirectories))
        {
            string copy = Path.Combine(target, Path.GetRelativePath(TestLaw.DemoFolder, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }

    // A command may share a paper's name, and 'label' is also an element of the page, a field of the
    // declarations and what a method takes.
    [Fact]
    public void NothingButItsFolderAndTheListNamesAPaper()
    {
        string source = Path.Combine(TestLaw.Repository, "src");
        var left = new List<string>();
        string ids = string.Join('|', PaperList.Own.All.Select(p => Regex.Escape(p.Id)));
        var literal = new Regex($"[\"'`]-?({ids})[\"'`]");
        var harmless = new Regex($"new Command\\(\\s*\"({ids})\"|\\(\"({ids})\", AnswerSchema|\\bel\\(\"label\"|param name=\"label\"");
        foreach (
            string project in new[] { "Chandlery.Paper", "Chandlery.Files", "Chandlery.Register", "Chandlery.Workbench", "Chandlery.Cli" }
        )
        {
            foreach (string file in Directory.GetFiles(Path.Combine(source, project), "*.*", SearchOption.AllDirectories))
            {
                string name = Path.GetRelativePath(source, file).Replace('\\', '/');
                if (
                    Path.GetExtension(file) is not (".cs" or ".js")
                    || name.Contains("/obj/", StringComparison.Ordinal)
                    || name.Contains("/bin/", StringComparison.Ordinal)
                    || name.StartsWith("Chandlery.Paper/Papers/", StringComparison.Ordinal)
                )
                {
                    continue;
                }

                string text = harmless.Replace(File.ReadAllText(file), "");
                left.AddRange(literal.Matches(text).Select(m => $"{name}: {m.Value}"));
            }
        }

        Assert.Empty(left);
        Assert.All(
            PaperList.Own.All,
            paper =>
                Assert.Single(
                    Directory.GetFiles(Path.Combine(source, "Chandlery.Paper", "Papers"), "*.cs", SearchOption.AllDirectories),
                    f => Regex.IsMatch(File.ReadAllText(f), $"Paper(Kind)?\\(\\s*\"{Regex.Escape(paper.Id)}\"")
                )
        );
    }
}

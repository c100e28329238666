using Chandlery.Cli;
using Chandlery.Tests.Support;
using Chandlery.Workbench;
using Chandlery.Yaml;

namespace Chandlery.Tests.Cli;

/// <summary>What is wrong with one file of a maker's folder stops only what depends on it.</summary>
public sealed class FolderTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("chandlery-folders-").FullName;

    public FolderTests()
    {
        foreach (string file in Directory.EnumerateFiles(TestLaw.DemoFolder, "*.yaml", SearchOption.AllDirectories))
        {
            string copy = In(Path.GetRelativePath(TestLaw.DemoFolder, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private string In(string file) => Path.Combine(folder, "maker", file);

    private string Out => Path.Combine(folder, "out");

    private void Break(string file, string field) =>
        File.WriteAllText(In(file), File.ReadAllText(In(file)).Replace($"\n{field}:", $"\nx{field}:", StringComparison.Ordinal));

    private static int Times(string text, string part) => text.Split(part).Length - 1;

    [Theory]
    [InlineData("trials", "trial")]
    [InlineData("stores", "lot")]
    [InlineData("incidents", "incident")]
    [InlineData("dispatches list", "dispatch")]
    public void WhereNothingOfAKindIsDeclaredItIsSaidHowToBegin(string command, string declares)
    {
        Assert.Equal(0, Command.Run("new", Out).Code);
        (int code, string output, string errors) = Command.Run([.. command.Split(' '), Out]);
        Assert.Equal(0, code);
        Assert.Equal($"No {declares} is declared in this folder: write a .yaml file with 'declares: {declares}'.\n", errors);
        Assert.DoesNotContain("---\n", output.Split("candle ")[0], StringComparison.Ordinal);
    }

    [Fact]
    public void ALogoThatIsMissingStopsTheLabelAlone()
    {
        File.AppendAllText(In("brand.yaml"), "logo: lost.svg\n");
        (int code, string output, _) = Command.Run("card", In("candles/fig-tin.yaml"), "--out", Out);
        Assert.Equal(ExitCode.Fine, code);
        Assert.Contains("fig-tin-burn-card.pdf", output, StringComparison.Ordinal);

        (code, output, string errors) = Command.Run("label", In("candles/fig-tin.yaml"), "--out", Out);
        Assert.Equal(ExitCode.BadInput, code);
        Assert.Contains("There is no file 'lost.svg'", errors, StringComparison.Ordinal);
        Assert.DoesNotContain("fig-tin-label.pdf", output, StringComparison.Ordinal);
    }

    [Fact]
    public void AHalfWrittenCandleStopsNoOther()
    {
        File.WriteAllText(In("candles/half.yaml"), "declares: candle\nname: Half\n");
        (int code, string output, string errors) = Command.Run("label", In(""), "--out", Out);
        Assert.Equal(ExitCode.BadInput, code);
        Assert.True(File.Exists(Path.Combine(Out, "fig-tin-label.pdf")));
        Assert.True(File.Exists(Path.Combine(Out, "hb-2611-label.pdf")));
        Assert.Contains("fig-tin-label.pdf", output, StringComparison.Ordinal);
        Assert.Contains("half.yaml:1:1: 'wax' is missing", errors, StringComparison.Ordinal);
        Assert.DoesNotContain("nothing was written", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void AProblemInAFileThatACandleDoesNotNeedIsOnlyANote()
    {
        Break("oils/cedar-smoke.yaml", "supplier");
        (int code, string output, string errors) = Command.Run("assess", In("candles/fig-tin.yaml"));
        Assert.Equal(ExitCode.Fine, code);
        Assert.StartsWith("Fig Tin", output, StringComparison.Ordinal);
        Assert.StartsWith("Note: ", Assert.Single(errors.Split('\n', StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
        Assert.Contains("cedar-smoke.yaml has 2 problems", errors, StringComparison.Ordinal);

        (code, output, errors) = Command.Run("assess", In(""));
        Assert.Equal(ExitCode.BadInput, code);
        Assert.Contains("Fig Tin", output, StringComparison.Ordinal);
        Assert.Contains("'supplier' is missing", errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("assess")]
    [InlineData("catalogue")]
    [InlineData("changes")]
    [InlineData("export", "--what", "blends")]
    public void AWrongWaxIsSaidOnceAndEachOfItsCandlesInALine(params string[] command)
    {
        string tin = File.ReadAllText(In("candles/fig-tin.yaml"));
        for (int i = 0; i < 5; i++)
        {
            File.WriteAllText(In($"candles/tin-{i}.yaml"), tin);
        }

        File.WriteAllText(In("waxes/own.yaml"), File.ReadAllText(In("waxes/soy-flake.yaml")));
        File.WriteAllText(In("candles/slate-jar.yaml"), File.ReadAllText(In("candles/slate-jar.yaml")).Replace("soy-flake", "own"));
        File.Delete(In("candles/harbour-bowl.yaml"));
        File.Delete(In("candles/tide-bowl.yaml"));
        File.Delete(In("batches/hb-2611.yaml"));
        Break("waxes/soy-flake.yaml", "supplier");
        (int code, _, string errors) = Command.Run([command[0], In(""), .. command[1..]]);
        Assert.Equal(ExitCode.BadInput, code);
        Assert.Equal(1, Times(errors, "'supplier' is missing"));
        // Eight candles, and the batches of tea lights and melts.
        Assert.Equal(10, Times(errors, $"Not assessed, because {In("waxes/soy-flake.yaml")} has problems."));
        Assert.DoesNotContain("There is no wax", errors, StringComparison.Ordinal);
        Assert.Equal(13, errors.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
    }

    [Fact]
    public void TheOneCandleThatNeedsAWrongFileIsRefusedWithTheCause()
    {
        Break("waxes/soy-flake.yaml", "supplier");
        (int code, string output, string errors) = Command.Run("label", In("candles/fig-tin.yaml"), "--out", Out);
        Assert.Equal((ExitCode.BadInput, ""), (code, output));
        Assert.Contains("'supplier' is missing", errors, StringComparison.Ordinal);
        Assert.EndsWith("nothing was written.", errors.TrimEnd(), StringComparison.Ordinal);
        Assert.False(Directory.Exists(Out));
    }

    [Fact]
    public void AWrongMakerStopsAllAndIsSaidOnce()
    {
        Break("maker.yaml", "telephone");
        (int code, _, string errors) = Command.Run("assess", In(""));
        Assert.Equal(ExitCode.BadInput, code);
        Assert.Equal(1, Times(errors, "'telephone' is missing"));
        int all = Directory.GetFiles(In("candles"), "*.yaml").Length + Directory.GetFiles(In("batches")).Length;
        Assert.Equal(all, Times(errors, $"Not assessed, because {In("maker.yaml")} has problems."));
    }

    [Fact]
    public void OfTwoCandlesOfOneNameNeitherIsPrinted()
    {
        Directory.CreateDirectory(In("more"));
        File.Copy(In("candles/fig-tin.yaml"), In("more/fig-tin.yaml"));
        (int code, _, string errors) = Command.Run("label", In(""), "--out", Out);
        Assert.Equal(ExitCode.BadInput, code);
        Assert.Equal(1, Times(errors, "There are two files named 'fig-tin' of this kind"));
        Assert.False(File.Exists(Path.Combine(Out, "fig-tin-label.pdf")));
        Assert.True(File.Exists(Path.Combine(Out, "slate-jar-label.pdf")));
    }

    [Theory]
    [InlineData("assess")]
    [InlineData("catalogue")]
    public void AFolderInsideTheMakersFindsItsRoot(string command)
    {
        (int code, string output, string errors) = Command.Run(command, In("candles"));
        Assert.Equal((ExitCode.Fine, ""), (code, errors));
        Assert.Contains("Slate", output, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("2611", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("assess")]
    [InlineData("label")]
    [InlineData("catalogue")]
    [InlineData("changes")]
    public void ADayBeforeTheFirstKnownLawIsRefusedInWords(string command)
    {
        (int code, string output, string errors) = Command.Run(command, In("candles/fig-tin.yaml"), "--as-of", "2010-01-01");
        Assert.Equal(ExitCode.BadInput, code);
        Assert.DoesNotContain("Fig Tin\n", output, StringComparison.Ordinal);
        Assert.Contains("No law is known for 2010-01-01", errors, StringComparison.Ordinal);
        Assert.DoesNotContain("fault of the program", errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("catalogue")]
    [InlineData("dossier")]
    public void ADayBeforeTheFirstKnownLawIsToldOnceForAllCandlesOfAFolder(string command)
    {
        (int code, _, string errors) = Command.Run(command, TestLaw.DemoFolder, "--as-of", "2010-01-01", "--place", "IE");
        Assert.Equal(ExitCode.BadInput, code);
        Assert.Single(errors.Split("No law is known for 2010-01-01")[1..]);
    }

    [Fact]
    public async Task ThePageRefusesADayBeforeTheFirstKnownLawInWords()
    {
        await using WorkbenchServer server = await WorkbenchServer.Start(Workroom.Open(In("candles"), new Problems())!, 0);
        using var client = new HttpClient { BaseAddress = new Uri(server.Address) };
        client.DefaultRequestHeaders.Add("X-Workbench", "1");
        await client.GetAsync(server.WayIn);
        string answer = await client.GetStringAsync("/api/changes?from=2010-01-01&to=2026-11-25");
        Assert.Contains("No law is known for 2010-01-01", answer, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("20", "What would help: A label of leaflet of 20 x 20 mm is too small")]
    [InlineData("105", "width missing at the smallest lawful text.")]
    public void AMisfitSaysWhatWouldHelpOnlyWhenSomethingWould(string side, string said)
    {
        string bowl = In("candles/harbour-bowl.yaml");
        string text = File.ReadAllText(bowl).Replace("soldIn: [IE, DE, AT]", "soldIn: [IE]", StringComparison.Ordinal);
        string name = side == "105" ? new string('W', 3000) : "Harbour Bowl";
        File.WriteAllText(
            bowl,
            text.Replace("name: Harbour Bowl", $"name: {name}", StringComparison.Ordinal)
                + $"label: {{ shape: leaflet, widthMm: {side}, heightMm: {side} }}\n"
        );
        (_, string output, string errors) = Command.Run("label", bowl, "--out", In("out"));
        Assert.Contains(said, output + errors, StringComparison.Ordinal);
        Assert.DoesNotContain("help: .", output + errors, StringComparison.Ordinal);
        Assert.DoesNotContain("..", output + errors, StringComparison.Ordinal);
    }

    [Fact]
    public void APipeInTheFolderIsPassedOverAndSaid()
    {
        using (var mkfifo = System.Diagnostics.Process.Start("mkfifo", [In("oils/pipe.yaml")]))
        {
            mkfifo.WaitForExit();
            Assert.Equal(0, mkfifo.ExitCode);
        }

        (int code, string output, string errors) = Command.Run("assess", In("candles/fig-tin.yaml"));
        Assert.Equal(ExitCode.Fine, code);
        Assert.StartsWith("Fig Tin", output, StringComparison.Ordinal);
        Assert.Contains("no regular file", errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--dpi must be a number such as 2.5, not 'abc'.", "label", "--dpi", "abc")]
    [InlineData("--copies must be a whole number, not 'z'.", "sheet", "--stock", "a4-3x4-circles-60", "--copies", "z")]
    [InlineData("--port must be between 1024 and 65535", "workbench", "--port", "80")]
    public void AUsageErrorIsInWords(string said, params string[] command)
    {
        (int code, _, string errors) = Command.Run([command[0], In(""), .. command[1..]]);
        Assert.Equal(ExitCode.BadInput, code);
        Assert.Contains(said, errors, StringComparison.Ordinal);
        Assert.DoesNotContain("System.", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void HelpSaysADefaultOnceAndNoDayOfAnotherForm()
    {
        string help = Command.Run("label", "--help").Output;
        Assert.Contains("Default: 300.", help, StringComparison.Ordinal);
        Assert.DoesNotContain("[default", help, StringComparison.Ordinal);
    }

    [Fact]
    public void ChangesOfOneCandleBetweenTwoFoldersTellOfThatCandleAlone()
    {
        using var later = new MakersFolder();
        later.Change("candles/harbour-bowl.yaml", "percent: 8", "percent: 3");
        (int code, string output, _) = Command.Run(
            "changes",
            Path.Combine(TestLaw.DemoFolder, "candles", "harbour-bowl.yaml"),
            "--to",
            later.Path
        );
        Assert.Equal(0, code);
        Assert.StartsWith("1 candle changes.", output, StringComparison.Ordinal);
        Assert.DoesNotContain("it is new", output, StringComparison.Ordinal);
    }
}

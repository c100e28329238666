using System.CommandLine;
using Chandlery.Cli;
using Chandlery.Tests.Support;
using Command = Chandlery.Tests.Support.Command;

namespace Chandlery.Tests.Cli;

/// <summary>Commands about candles take candles of several paths and folders.</summary>
public sealed class SeveralPathsTests : IDisposable
{
    /// <summary>Commands about candles that take one path, each with the reason.</summary>
    private static readonly Dictionary<string, string> TakeOne = new()
    {
        ["catalogue"] = "it is of a whole folder",
        ["changes"] = "it compares one folder with another",
        ["export"] = "a table is of one folder, as 'import' reads it back",
        ["measure"] = "it is of one label",
        ["register add"] = "an entry's documents are of what one path means",
        ["sets"] = "it is of a whole folder",
        ["trace"] = "what is asked for stands behind the path",
    };

    private readonly Tool tool = new();

    public void Dispose() => tool.Dispose();

    private static string Demo(string candle) => Path.Combine(TestLaw.DemoFolder, "candles", candle + ".yaml");

    [Fact]
    public void Every_command_about_candles_takes_several_or_there_is_a_reason_why_not()
    {
        List<(string Name, Argument Path)> commands = [.. Paths(CommandTree.Build(), "")];
        Assert.Contains(commands, c => c.Name == "label");
        Assert.Equal(
            commands.Where(c => c.Path.Arity.MaximumNumberOfValues == 1).Select(c => c.Name).Order(StringComparer.Ordinal),
            TakeOne.Keys.Order(StringComparer.Ordinal)
        );
    }

    private static IEnumerable<(string Name, Argument Path)> Paths(System.CommandLine.Command command, string name) =>
        command
            .Subcommands.SelectMany(c => Paths(c, $"{name} {c.Name}".Trim()))
            .Concat(command.Arguments.Where(a => a.Name is "path" or "paths").Select(a => (name, a)));

    [Theory]
    [InlineData("label", "label.pdf")]
    [InlineData("card", "en-burn-card.pdf")]
    [InlineData("safety-sheet", "safety-sheet.pdf")]
    [InlineData("bench-sheet", "bench-sheet.pdf")]
    [InlineData("technical-file", "technical-file.pdf")]
    public void Papers_of_several_paths_are_printed_at_once_and_each_once(string command, string paper)
    {
        (int code, string output, string errors) = Command.Run([
            command,
            Demo("fig-tin"),
            Demo("slate-jar"),
            Demo("fig-tin"),
            "--place",
            "IE",
            "--out",
            tool.Folder,
        ]);
        Assert.True(code == ExitCode.Fine, errors);
        foreach (string candle in new[] { "fig-tin", "slate-jar" })
        {
            string[] made = Directory.GetFiles(tool.Folder, candle + "-*.pdf");
            Assert.True(made.Any(f => f.EndsWith(paper.Replace("en-", "", StringComparison.Ordinal), StringComparison.Ordinal)), output);
            Assert.Equal(2, output.Split(Path.GetFileName(made[0])).Length);
        }
    }

    [Theory]
    [InlineData("assess --json")]
    [InlineData("safety-sheet --json")]
    [InlineData("technical-file --json")]
    [InlineData("duties --json")]
    [InlineData("listing --json")]
    public void A_candle_that_two_paths_mean_is_answered_for_once(string command)
    {
        string[] words = command.Split(' ');
        string Of(params string[] paths) => Command.Run([words[0], .. paths, words[1], "--place", "IE"]).Output;
        string once = Of(Demo("fig-tin"));
        Assert.NotEqual("", once);
        Assert.Equal(once, Of(Demo("fig-tin"), Demo("fig-tin")));
    }

    [Fact]
    public void Designs_for_several_laws_are_kept_apart()
    {
        using var folder = new MakersFolder();
        folder.Change("candles/fig-tin.yaml", "soldIn: [IE]", "soldIn: [IE, US]");
        string tin = Path.Combine(folder.Path, "candles", "fig-tin.yaml");
        (int code, _, string errors) = Command.Run("designs", tin, "--design", "strata", "--piece", "lid", "--out", tool.Folder);
        Assert.True(code == 0, errors);
        Assert.Equal(
            ["eu-clp-fig-tin-strata-lid.pdf", "united-states-fig-tin-strata-lid.pdf"],
            Directory.GetFiles(tool.Folder).Select(Path.GetFileName).Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void A_dossier_of_several_paths_has_a_folder_for_each()
    {
        Assert.Equal(
            0,
            Command.Run("dossier", Demo("fig-tin"), Demo("slate-jar"), "--place", "IE", "--format", "pdf", "--out", tool.Folder).Code
        );
        Assert.Equal(
            ["fig-tin", "slate-jar"],
            Directory.GetDirectories(tool.Folder).Select(Path.GetFileName).Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void Candles_of_one_name_in_two_folders_never_take_each_others_place()
    {
        using var other = new MakersFolder();
        other.Change("maker.yaml", "Tarnvey Candle Shed", "Second Shed");
        string second = Path.Combine(other.Path, "candles", "slate-jar.yaml");
        (int code, _, string errors) = Command.Run("label", Demo("slate-jar"), second, "--place", "IE", "--out", tool.Folder);
        Assert.Equal(ExitCode.BadInput, code);
        Assert.Contains("Two files would have the name 'slate-jar-label.pdf'", errors, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(tool.Folder));
        (code, string output, errors) = Command.Run("duties", Demo("slate-jar"), second, "--place", "IE", "--json");
        Assert.True(code is ExitCode.Fine or ExitCode.StopsSale, errors);
        Assert.Contains(other.Path, output, StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_candle_costs_is_reckoned_from_the_lots_of_its_own_folder()
    {
        using var other = new MakersFolder();
        other.Change("lots/tins-26-09.yaml", "paid: 90", "paid: 900");
        string second = Path.Combine(other.Path, "candles", "fig-tin.yaml");
        string[] day = ["--as-of", "2026-11-25"];
        string Alone(string candle) => Command.Run(["cost", candle, .. day]).Output;
        Assert.NotEqual(Alone(Demo("fig-tin")), Alone(second));
        Assert.Equal(Alone(Demo("fig-tin")) + Alone(second), Command.Run(["cost", Demo("fig-tin"), second, .. day]).Output);
    }
}

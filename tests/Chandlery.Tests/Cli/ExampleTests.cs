using System.CommandLine;
using System.Text.RegularExpressions;
using Chandlery.Cli;
using Chandlery.Tests.Support;
using Command = Chandlery.Tests.Support.Command;

namespace Chandlery.Tests.Cli;

/// <summary>Every command has an example, and every example does what it says; the workbench's is run with the guide's commands.</summary>
[Trait("Program", "published")]
public sealed partial class ExampleTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("chandlery-examples-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Every_command_has_an_example_in_help_and_reference()
    {
        RootCommand root = CommandTree.Build();
        List<System.CommandLine.Command> commands = [.. Commands(root).Where(c => c.Subcommands.Count == 0)];
        Assert.Equal(commands.Count, Examples.All.Count);
        string reference = Blanks().Replace(File.ReadAllText(Path.Combine(TestLaw.Repository, "data", "guide", "reference.md")), " ");
        Assert.All(
            commands,
            c =>
            {
                string? example = Examples.Of(c);
                Assert.NotNull(example);
                Assert.Contains(example, reference, StringComparison.Ordinal);
            }
        );
        Assert.Contains(
            "Example:\n  chandlery register find out/register.sqlite",
            Command.Run("register", "find", "--help").Output.ReplaceLineEndings("\n"),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Every_example_does_what_it_says()
    {
        Directory.CreateSymbolicLink(Path.Combine(folder, "data"), Path.Combine(TestLaw.Repository, "data"));
        File.Copy(
            Path.Combine(TestLaw.Repository, "tests", "Chandlery.Sheets", "pdf", "night-fig.own-lines-en.pdf"),
            Path.Combine(folder, "night-fig.pdf")
        );
        foreach ((string command, string line) in Examples.All.OrderBy(e => e.Command != "new").Where(e => e.Command != "workbench"))
        {
            (int code, string output, string errors) = Command.RunIn(folder, [.. Words().Matches(line).Select(m => m.Value.Trim('"'))]);
            Assert.True(code is ExitCode.Fine or ExitCode.StopsSale, $"{command}: {output}{errors}");
        }
    }

    private static IEnumerable<System.CommandLine.Command> Commands(System.CommandLine.Command command) =>
        command.Subcommands.SelectMany(c => Commands(c).Prepend(c));

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();

    [GeneratedRegex("\"[^\"]*\"|\\S+")]
    private static partial Regex Words();
}

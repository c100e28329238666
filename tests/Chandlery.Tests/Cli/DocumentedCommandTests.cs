using System.Diagnostics;
using System.Text.RegularExpressions;
using Chandlery.Core.Asked.Comparisons;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Cli;

/// <summary>Runs every command that README and guide show, in their order, in a fresh folder, as a newcomer would.</summary>
[Trait("Program", "published")]
public sealed partial class DocumentedCommandTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("chandlery-docs-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [InlineData("README.md", 15)]
    [InlineData("data/guide/makers.md", 12)]
    [InlineData("data/guide/if-something-goes-wrong.md", 8)]
    [InlineData("data/guide/a-day-at-the-bench.md", 8)]
    [InlineData("data/guide/kinds-of-product.md", 4)]
    public void Every_command_does_what_it_says(string document, int least)
    {
        Directory.CreateSymbolicLink(Path.Combine(folder, "data"), Path.Combine(TestLaw.Repository, "data"));
        Directory.CreateSymbolicLink(Path.Combine(folder, "tests"), Path.Combine(TestLaw.Repository, "tests"));
        File.Copy(
            Path.Combine(TestLaw.Repository, "tests", "Chandlery.Sheets", "pdf", "night-fig.own-lines-en.pdf"),
            Path.Combine(folder, "night-fig.pdf")
        );
        List<string> commands = [.. Commands(File.ReadAllText(Path.Combine(TestLaw.Repository, document)))];
        Assert.True(commands.Count >= least, string.Join('\n', commands));
        foreach (string command in commands)
        {
            (int code, string said) = Run(command);
            Assert.True(code is 0 or 1, $"{command}\n{said}");
            Assert.DoesNotContain("   at Chandlery.", said, StringComparison.Ordinal);
            if (command.StartsWith("new my-candles", StringComparison.Ordinal))
            {
                Directory.CreateDirectory(Path.Combine(folder, "new"));
                File.Copy(Path.Combine(folder, "my-candles", "oils", "first-oil.yaml"), Path.Combine(folder, "new", "first-oil.yaml"));
            }
        }
    }

    private static IEnumerable<string> Commands(string markdown)
    {
        foreach (Match match in Shown().Matches(markdown))
        {
            string command = (match.Groups["inline"].Success ? match.Groups["inline"] : match.Groups["block"]).Value.Trim();
            if (!command.Contains("...", StringComparison.Ordinal) && command.Length > 0)
            {
                yield return command;
            }
        }
    }

    private (int Code, string Said) Run(string command)
    {
        string[] arguments = [.. Words().Matches(command).Select(m => m.Value.Trim('"'))];
        bool page = arguments[0] == "workbench";
        if (page && !arguments.Contains("--no-browser"))
        {
            arguments = [.. arguments, "--no-browser"];
        }

        if (page)
        {
            using Process process = Command.Start(folder, arguments);
            string? address = process.StandardOutput.ReadLine();
            process.Kill();
            return (
                address?.StartsWith("http://127.0.0.1:", StringComparison.Ordinal) == true ? 0 : 2,
                address ?? process.StandardError.ReadToEnd()
            );
        }

        (int code, string output, string errors) = Command.RunIn(folder, arguments);
        return (code, output + errors);
    }

    [Theory]
    [InlineData("reference.md")]
    [InlineData("law.md", "--law")]
    public void The_reference_is_up_to_date(string file, params string[] options)
    {
        (int code, string said) = Run(string.Join(' ', options.Prepend("reference")));
        Assert.Equal(0, code);
        Assert.True(
            said == File.ReadAllText(Path.Combine(TestLaw.Repository, "data", "guide", file)),
            $"run: chandlery reference {string.Join(' ', options)} > data/guide/{file}"
        );
    }

    [Fact]
    public void A_new_folder_can_be_assessed_at_once_and_is_never_overwritten()
    {
        Assert.Equal(0, Run("new mine").Code);
        Assert.Equal(0, Run("assess mine").Code);
        Assert.Equal(0, Run("label mine/candles/first-candle.yaml --out print").Code);
        (int code, string said) = Run("dossier mine --out print");
        Assert.Equal(0, code);
        Assert.Contains("no safety data sheet yet", said, StringComparison.Ordinal);
        (code, said) = Run("new mine");
        Assert.Equal(2, code);
        Assert.Contains("exists already", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Version_names_every_edition_with_its_day()
    {
        string said = Run("version --full").Said;
        Assert.All(
            TestLaw.Lawbook.Editions,
            e => Assert.Contains($"{e.Id}: {e.Name}; sources looked up {e.LookedUp:yyyy-MM-dd}", said, StringComparison.Ordinal)
        );
        Assert.Contains("leaves to others: physical hazards", said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("bash", "complete -o default")]
    [InlineData("zsh", "compdef")]
    [InlineData("fish", "complete -c chandlery")]
    [InlineData("pwsh", "Register-ArgumentCompleter")]
    public void Shells_get_their_completions(string shell, string holds) =>
        Assert.Contains(holds, Run($"completions {shell}").Said, StringComparison.Ordinal);

    [Fact]
    public void Completion_offers_commands() =>
        Assert.Contains("safety-sheet", Run("[suggest:13] \"chandlery saf\"").Said, StringComparison.Ordinal);

    [Fact]
    public void The_manual_page_is_one()
    {
        string page = Run("manual --roff").Said;
        Assert.StartsWith(".TH CHANDLERY 1", page, StringComparison.Ordinal);
        Assert.Contains(".SH EXIT STATUS", page, StringComparison.Ordinal);
        Assert.Contains("register find", Run("manual").Said, StringComparison.Ordinal);
    }

    // A command alone on an indented line, or between backticks; in the README also behind 'dotnet run ... --'.
    [GeneratedRegex(
        @"`chandlery (?<inline>[^`\n]+)`|^ {4,}(?:chandlery|dotnet run --project src/Chandlery\.Cli -c Release --) (?<block>[^#\n]+)",
        RegexOptions.Multiline
    )]
    private static partial Regex Shown();

    [GeneratedRegex("\"[^\"]*\"|\\S+")]
    private static partial Regex Words();
}

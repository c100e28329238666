using System.Diagnostics;
using Chandlery.Cli;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Cli;

/// <summary>The program on machines that are set up oddly: it works, or says in words why not.</summary>
public sealed class SurroundingsTests
{
    private static (int Code, string Said) Run(Dictionary<string, string> environment, params string[] arguments)
    {
        var start = new ProcessStartInfo(Command.Program[0], [.. Command.Program.Skip(1), .. arguments])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach ((string name, string value) in environment)
        {
            start.Environment[name] = value;
        }

        using Process process = Process.Start(start)!;
        Task<string> errors = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output + errors.Result);
    }

    [Theory]
    [InlineData("assess")]
    [InlineData("label")]
    [InlineData("register add")]
    public void A_home_that_does_not_exist_is_no_matter(string command)
    {
        using var folder = new MakersFolder();
        string into = Path.Combine(folder.Path, "out");
        string[] more =
            command == "label" ? ["--out", into]
            : command == "register add" ? ["--by", "M. Hale"]
            : [];
        (int code, string said) = Run(
            new()
            {
                ["HOME"] = "/no/such/home",
                ["XDG_CACHE_HOME"] = "",
                ["TMPDIR"] = "/tmp",
            },
            [.. command.Split(' '), Path.Combine(folder.Path, "candles", "fig-tin.yaml"), "--place", "IE", .. more]
        );
        Assert.True(code == ExitCode.Fine, said);
        Assert.DoesNotContain("/no/such/home", said, StringComparison.Ordinal);
    }

    // Of the runtime's own messages only their keys were left once.
    [Fact]
    public void What_the_system_refuses_is_said_in_words()
    {
        using var folder = new MakersFolder();
        string candle = Path.Combine(folder.Path, "candles", "fig-tin.yaml");
        string file = Path.Combine(folder.Path, "a-file");
        File.WriteAllText(file, "");
        (int Code, string Said)[] refused =
        [
            Run([], "label", candle, "--place", "IE", "--out", file),
            Run([], "register", "verify", Path.Combine(folder.Path, "no-such.sqlite")),
            Run([], "register", "add", candle, "--by", "me", "--documents", Path.Combine(folder.Path, "no-such.pdf")),
            Run([], "import", Path.Combine(folder.Path, "no-such.csv"), "--into", folder.Path),
            Run([], "assess", Path.Combine(folder.Path, "no-such.yaml")),
        ];
        Assert.All(
            refused,
            r =>
            {
                Assert.Equal(ExitCode.BadInput, r.Code);
                Assert.Matches(@"\p{L}+ \p{L}+ \p{L}+", r.Said);
                Assert.DoesNotMatch(@"\b[A-Z][A-Za-z]+_[A-Z]\w+|fault of the program|Exception", r.Said);
            }
        );
    }
}

using System.Diagnostics;
using System.Text.RegularExpressions;
using Chandlery.Cli;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Cli;

/// <summary>Whoever waits at a terminal sees how far the work is; nobody else is told.</summary>
[Trait("Program", "published")]
public sealed class ProgressTests
{
    private static string Told(bool isWatched, double seconds, Action<Progress> work)
    {
        var errors = new StringWriter();
        work(new Progress(errors, isWatched, () => TimeSpan.FromSeconds(seconds)));
        return errors.ToString();
    }

    [Fact]
    public void Nothing_is_drawn_within_a_second_or_for_nobody()
    {
        Assert.Equal("", Told(true, 0.9, p => p.Tell(5, 10)));
        Assert.Equal("", Told(false, 9, p => p.Tell(5, 10)));
        Assert.Equal("", Told(true, 9, p => p.Tell(0, 0)));
    }

    [Fact]
    public void A_bar_grows_is_not_drawn_twice_and_leaves_nothing_behind()
    {
        Assert.Equal($"\r[{new string('#', 15)}{new string('.', 15)}] 5 of 10", Told(true, 1, p => p.Tell(5, 10)));
        string twice = Told(
            true,
            2,
            p =>
            {
                p.Tell(500, 1000);
                p.Tell(501, 1000);
                p.Tell(499, 1000);
                p.Tell(1000, 1000);
            }
        );
        Assert.Equal(2, twice.Count(c => c == '\r'));
        Assert.EndsWith($"[{new string('#', 30)}] 1000 of 1000", twice, StringComparison.Ordinal);
        string cleared = Told(
            true,
            2,
            p =>
            {
                p.Tell(1, 2);
                p.Clear();
                p.Clear();
            }
        );
        string bar = cleared.Split('\r')[1];
        Assert.Equal($"\r{bar}\r{new string(' ', bar.Length)}\r", cleared);
    }

    [NeedsToolFact("script")]
    public void A_dossier_shows_its_progress_on_a_terminal_and_never_with_quiet()
    {
        using var folder = new MakersFolder();

        // The demo alone may be done before anybody has waited for a second.
        foreach (string candle in Directory.GetFiles(Path.Combine(folder.Path, "candles"), "*.yaml"))
        {
            File.Copy(candle, Path.ChangeExtension(candle, "second.yaml"));
            File.Copy(candle, Path.ChangeExtension(candle, "third.yaml"));
        }

        Assert.Matches(@"\r\[[#.]{30}\] [0-9]+ of [0-9]+", OnTerminal(folder, ""));
        Assert.DoesNotMatch(@"\[[#.]{30}\]", OnTerminal(folder, "--quiet"));
        Assert.DoesNotMatch(@"\[[#.]{30}\]", OnTerminal(folder, "2>/dev/null"));
    }

    private static string OnTerminal(MakersFolder folder, string more)
    {
        string program = Command.Published ?? $"dotnet {Path.Combine(AppContext.BaseDirectory, "chandlery.dll")}";
        string line = $"{program} dossier {folder.Path} --format pdf --out {Path.Combine(folder.Path, "out")} {more}";
        using Process process = Process.Start(
            new ProcessStartInfo("script", ["-qc", line, "/dev/null"]) { RedirectStandardOutput = true, RedirectStandardInput = true }
        )!;
        string said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return Regex.Replace(said, "\r\r", "\r");
    }
}

using System.Diagnostics;
using System.Text.Json;
using Chandlery.Cli;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Cli;

/// <summary>How commands speak: one line for a slip, no more than was asked, nothing that steers a terminal.</summary>
public sealed class MannersTests
{
    private static string Candle { get; } = Path.Combine(TestLaw.DemoFolder, "candles", "fig-tin.yaml");

    private static string Stopped { get; } = Path.Combine(TestLaw.StoppedFolder, "candles", "storm-jar.yaml");

    [Theory]
    [InlineData("asess data/demo", "chandlery: there is no command 'asess'. Did you mean 'assess'? See 'chandlery --help'.")]
    [InlineData(
        "assess x --plase DE",
        "chandlery assess: there is no option '--plase'. Did you mean '--place'? See 'chandlery assess --help'."
    )]
    [InlineData("sheet x y --plase DE --stock a4-2x4", "chandlery sheet: there is no option '--plase'. Did you mean '--place'?")]
    [InlineData("assess x --quite", "Did you mean '--quiet'?")]
    [InlineData("assess", "<path> is missing.")]
    [InlineData("export x y", "'y' is one word too many.")]
    [InlineData("ceiling x --oil", "'--oil' needs a value.")]
    [InlineData("export x --what blend", "'blend' is nothing that '--what' takes: all, blends, candles. Did you mean 'blends'?")]
    [InlineData("packaging x --year soon", "'soon' is nothing that '--year' takes. One year only.")]
    [InlineData("completions fisch", "Did you mean 'fish'?")]
    [InlineData("register fnd x", "chandlery register: there is no command 'fnd'. Did you mean 'find'? See 'chandlery register --help'.")]
    [InlineData("register", "one more word is needed: add, find, ")]
    [InlineData("import x", "--into")]
    [InlineData("recall DEMO --lot CS-1108", "Nothing named 'CS-1108' is declared as lot. Did you mean 'CS-1107'?")]
    [InlineData("catalogue DEMO --place Germny", "--place: There is no edition of the law for the place 'Germny'. Did you mean 'Germany'?")]
    [InlineData("assess DEMO --place Germny", "--place: There is no edition of the law for the place 'Germny'. Did you mean 'Germany'?")]
    [InlineData("changes DEMO --place QQ", "Known places: AT (Austria), ")]
    [InlineData("assess x --as-of soon", "'soon' is not a day")]
    public void A_slip_is_one_line_with_the_nearest_word(string line, string said)
    {
        (int code, string output, string errors) = Command.Run(
            line.Replace("DEMO", TestLaw.DemoFolder, StringComparison.Ordinal).Split(' ')
        );
        Assert.Equal(ExitCode.BadInput, code);
        Assert.Equal("", output);
        Assert.Contains(said, errors, StringComparison.Ordinal);
        Assert.Single(errors.TrimEnd().Split('\n'));
        Assert.DoesNotContain("System.", errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("assess")]
    [InlineData("arrange")]
    [InlineData("ceiling")]
    public void Several_paths_are_answered_one_after_the_other(string command)
    {
        string other = Path.Combine(TestLaw.DemoFolder, "candles", "slate-jar.yaml");
        string output = Command.Run(command, Candle, other).Output;
        Assert.InRange(output.IndexOf("Fig Tin", StringComparison.Ordinal), 0, output.IndexOf("Slate Jar", StringComparison.Ordinal));
    }

    [Fact]
    public void Quiet_says_what_is_wrong_and_nothing_else()
    {
        Assert.Equal((ExitCode.Fine, "", ""), Command.Run("assess", Candle, "--quiet"));
        Assert.Equal((ExitCode.StopsSale, "", ""), Command.Run("assess", Stopped, "--quiet"));
        (int code, string output, string errors) = Command.Run("assess", Candle + "x", "--quiet");
        Assert.Equal((ExitCode.BadInput, ""), (code, output));
        Assert.Contains("There is no such file", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Verbose_says_what_was_read()
    {
        (_, string output, string errors) = Command.Run("assess", Candle, "--verbose", "--place", "IE", "--as-of", "2026-11-25");
        Assert.Contains("1 asked for; law of 2026-11-25.", errors, StringComparison.Ordinal);
        Assert.Contains("1 assessed: fig-tin under eu-clp.", errors, StringComparison.Ordinal);
        Assert.Equal(Command.Run("assess", Candle, "--place", "IE", "--as-of", "2026-11-25").Output, output);
    }

    [Theory]
    [InlineData(false, null, "xterm-256color", true)]
    [InlineData(false, "", "xterm", true)]
    [InlineData(true, null, "xterm", false)]
    [InlineData(false, "1", "xterm", false)]
    [InlineData(false, null, "dumb", false)]
    [InlineData(false, null, null, false)]
    public void Colours_are_for_terminals_that_have_them_and_for_whoever_wants_them(
        bool redirected,
        string? noColor,
        string? terminal,
        bool wanted
    ) => Assert.Equal(wanted, Ink.IsWanted(redirected, noColor, terminal));

    [Fact]
    public void Nothing_is_coloured_in_a_pipe() =>
        Assert.DoesNotContain('\u001b', Command.RunIn("", "assess", Stopped).Output + Command.RunIn("", "asess").Errors);

    [NeedsToolFact("script")]
    public void A_terminal_gets_colours_unless_it_says_no()
    {
        Assert.Contains("\u001b[31mDO NOT SELL", OnTerminal("TERM=xterm"), StringComparison.Ordinal);
        Assert.DoesNotContain("\u001b[31m", OnTerminal("TERM=xterm NO_COLOR=1"), StringComparison.Ordinal);
        Assert.DoesNotContain("\u001b[31m", OnTerminal("TERM=dumb"), StringComparison.Ordinal);
    }

    [NeedsToolFact("script")]
    public void Nothing_is_wider_than_a_terminal()
    {
        foreach (
            string command in (string[])
                [
                    $"assess {Stopped}",
                    $"substance linalool --in {TestLaw.DemoFolder}",
                    $"changes {TestLaw.DemoFolder} --to-as-of 2028-02-01",
                    $"technical-file {Candle} --out {Path.GetTempPath()}chandlery-manners",
                    "kinds",
                    $"trials {TestLaw.DemoFolder}",
                    $"assess {Candle} --plase DE",
                    $"assess {Candle}x",
                ]
        )
        {
            string said = OnTerminalLine($"stty cols 80; env TERM=dumb PROGRAM {command}");
            Assert.NotEqual("", said.Trim());
            Assert.DoesNotContain(said.ReplaceLineEndings("\n").Split('\n'), l => l.Length > 80 && l.Trim().Contains(' '));
        }
    }

    [NeedsToolFact("script")]
    public void What_another_program_reads_is_never_broken()
    {
        string said = OnTerminalLine($"stty cols 80; env TERM=dumb PROGRAM assess {Candle} --json 2>/dev/null");
        Assert.Equal(JsonValueKind.Object, JsonDocument.Parse(said).RootElement.ValueKind);
    }

    [NeedsToolFact("script")]
    public void A_name_cannot_write_the_programs_own_colours()
    {
        using var folder = new MakersFolder();
        folder.Change("candles/fig-tin.yaml", "name: Fig Tin", "name: \"Fig\\e[31m Tin\\e[0m\"");
        string candle = Path.Combine(folder.Path, "candles", "fig-tin.yaml");
        string said = OnTerminalLine($"env TERM=xterm PROGRAM assess {candle}");
        Assert.Contains("\u001b[1mFig\uFFFD[31m Tin\uFFFD[0m\u001b[0m", said, StringComparison.Ordinal);
    }

    [NeedsToolFact("script")]
    public void No_colour_gets_into_a_file()
    {
        using var folder = new MakersFolder();
        string into = Path.Combine(folder.Path, "made");
        OnTerminalLine($"env TERM=xterm PROGRAM dossier {Candle} --place IE --out {into}");
        string page = Directory.GetFiles(into, "assessment.txt", SearchOption.AllDirectories).Select(File.ReadAllText).First();
        Assert.StartsWith("Fig Tin", page, StringComparison.Ordinal);
    }

    private static string OnTerminal(string variables) => OnTerminalLine($"env {variables} PROGRAM assess {Stopped}");

    private static string OnTerminalLine(string line)
    {
        string program = Command.Published ?? $"dotnet {Path.Combine(AppContext.BaseDirectory, "chandlery.dll")}";
        var start = new ProcessStartInfo("script", ["-qc", line.Replace("PROGRAM", program, StringComparison.Ordinal), "/dev/null"])
        {
            RedirectStandardOutput = true,
            RedirectStandardInput = true,
        };
        using Process process = Process.Start(start)!;
        string said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return said;
    }

    [Theory]
    [InlineData("a\u001b[2Jb", "a\uFFFD[2Jb")]
    [InlineData("a\u202Eb\u2066c\u200Fd\u061Ce", "a\uFFFDb\uFFFDc\uFFFDd\uFFFDe")]
    [InlineData("a\rb\r\nc\td\n", "a\uFFFDb\r\nc\td\n")]
    [InlineData("\u001b[31mstop\u001b[0m", "\uFFFD[31mstop\uFFFD[0m")]
    [InlineData("\uFDD00123456789ABCDEF2stop", "\uFDD00123456789ABCDEF2stop")]
    [InlineData("\u001b[31", "\uFFFD[31")]
    [InlineData("a\u0007\u009bb", "a\uFFFD\uFFFDb")]
    public void What_steers_a_terminal_is_shown_as_a_mark(string text, string shown)
    {
        var terminal = new StringWriter();
        using var writer = new HarmlessWriter(terminal);
        writer.Write(text);
        Assert.Equal(shown, terminal.ToString());
    }

    [Fact]
    public void The_programs_own_colours_reach_a_terminal()
    {
        var terminal = new StringWriter();
        using var writer = new HarmlessWriter(terminal);
        writer.Write(new Ink(true).Stop("stop"));
        Assert.Equal("\u001b[31mstop\u001b[0m", terminal.ToString());
    }

    [Theory]
    [InlineData("short\n", "short\n")]
    [InlineData("one two three four five\n", "one two\nthree four\nfive\n")]
    [InlineData("  one two three four\n", "  one two\n  three\n  four\n")]
    [InlineData("- one two three four\n", "- one two\n  three\n  four\n")]
    [InlineData("onetwothreefourfive six\n", "onetwothreefourfive\nsix\n")]
    [InlineData("ten letter\n\nnext\n", "ten letter\n\nnext\n")]
    public void Lines_that_are_wider_than_a_terminal_are_broken_at_blanks(string text, string shown)
    {
        var terminal = new StringWriter();
        using var writer = new HarmlessWriter(terminal, 10);
        foreach (char letter in text)
        {
            writer.Write(letter);
        }

        Assert.Equal(shown.ReplaceLineEndings(), terminal.ToString());
    }

    [Fact]
    public void Colours_take_no_room_in_a_line()
    {
        var terminal = new StringWriter();
        using var writer = new HarmlessWriter(terminal, 10);
        writer.WriteLine(new Ink(true).Stop("one two three"));
        Assert.Equal("\u001b[31mone two\nthree\u001b[0m\n".ReplaceLineEndings(), terminal.ToString());
    }

    [Theory]
    [InlineData("assess")]
    [InlineData("import")]
    [InlineData("register find")]
    public void Help_is_given_whatever_the_command_wants(string command)
    {
        (int code, string output, string errors) = Command.Run([.. command.Split(' '), "--help"]);
        Assert.Equal(ExitCode.Fine, code);
        Assert.Contains("Usage:", output, StringComparison.Ordinal);
        Assert.Equal("", errors);
    }

    [Fact]
    public void A_lost_register_is_not_begun_anew_over_its_witness()
    {
        using var folder = new MakersFolder();
        string register = Path.Combine(folder.Path, "lost.sqlite");
        string batch = Path.Combine(TestLaw.DemoFolder, "batches", "hb-2611.yaml");
        Assert.Equal(0, Command.RunHere("register", "add", batch, "--by", "me", "--register", register).Code);
        File.Delete(register);
        (int code, _, string errors) = Command.RunHere("register", "verify", register);
        Assert.NotEqual(ExitCode.Fine, code);
        Assert.Contains("is gone", errors, StringComparison.Ordinal);
        (code, _, errors) = Command.RunHere("register", "add", batch, "--by", "me", "--register", register);
        Assert.NotEqual(ExitCode.Fine, code);
        Assert.Contains("names entry 1", errors, StringComparison.Ordinal);
        Assert.StartsWith("1 ", File.ReadAllText(register + ".head"), StringComparison.Ordinal);
    }

    [Fact]
    public void Ceilings_of_a_liquid_speak_of_its_base_and_ask_for_its_flash_point()
    {
        string ceilings = Command.RunHere("ceiling", Path.Combine(TestLaw.DemoFolder, "candles", "sailcloth-spray.yaml")).Output;
        Assert.Contains("% of base", ceilings, StringComparison.Ordinal);
        Assert.Contains("must be measured again", ceilings, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"\b(?:wax|melt|candle)\b", ceilings);
    }

    [Fact]
    public void Nobody_is_asked_to_burn_what_does_not_burn()
    {
        string tests = Command.RunHere("tests", TestLaw.DemoFolder, "--json").Output;
        Assert.Contains("harbour-bowl", tests, StringComparison.Ordinal);
        Assert.DoesNotContain("sailcloth-spray", tests, StringComparison.Ordinal);
        Assert.DoesNotContain("fig-melts", tests, StringComparison.Ordinal);
    }

    [Fact]
    public void A_candle_and_a_table_come_by_the_standard_input()
    {
        string candle = File.ReadAllText(Candle);
        Assert.Equal(Piped(TestLaw.DemoFolder, candle, "assess", "-").Code, Command.Run("assess", Candle).Code);
        Assert.Contains("Fig", Piped(TestLaw.DemoFolder, candle, "assess", "-").Output, StringComparison.Ordinal);
        (int code, _, string errors) = Piped(
            TestLaw.DemoFolder,
            candle.Replace("soldIn", "soldin", StringComparison.Ordinal),
            "assess",
            "-"
        );
        Assert.Equal(ExitCode.BadInput, code);
        Assert.Matches("standard input:[0-9]+:[0-9]+: 'soldin' is not a field", errors);
        (code, _, errors) = Piped(TestLaw.DemoFolder, "declares: maker\n", "assess", "-");
        Assert.Equal(ExitCode.BadInput, code);
        Assert.Contains("standard input", errors, StringComparison.Ordinal);
        (code, _, errors) = Piped("", new string('x', 5_000_000), "import", "-", "--into", "nowhere");
        Assert.Equal(ExitCode.BadInput, code);
        Assert.Contains("larger than", errors, StringComparison.Ordinal);
    }

    private static (int Code, string Output, string Errors) Piped(string folder, string input, params string[] arguments)
    {
        string[] command = Command.Published is null
            ? ["dotnet", Path.Combine(AppContext.BaseDirectory, "chandlery.dll")]
            : [Command.Published];
        using Process process = Process.Start(
            new ProcessStartInfo(command[0], [.. command.Skip(1), .. arguments])
            {
                WorkingDirectory = folder,
                RedirectStandardInput = true,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            }
        )!;
        Task<string> output = process.StandardOutput.ReadToEndAsync();
        Task<string> errors = process.StandardError.ReadToEndAsync();
        try
        {
            process.StandardInput.Write(input);
            process.StandardInput.Close();
        }
        catch (IOException)
        {
            // It stopped reading what is too long.
        }

        process.WaitForExit();
        return (process.ExitCode, output.Result, errors.Result);
    }

    [Theory]
    [InlineData("chandlery assess x --place ", "DE")]
    [InlineData("chandlery listing x --language ", "fr")]
    [InlineData("chandlery sheet x --stock ", "a4-2x2")]
    [InlineData("chandlery designs x --design ", "strata")]
    [InlineData("chandlery statements ", "hu")]
    [InlineData("chandlery assess ", "candles/fig-tin.yaml")]
    [InlineData("chandlery ceiling candles/fig-tin.yaml --oil ", "cedar-smoke")]
    [InlineData("chandlery blend . --trial ", "orchard-pier")]
    public void The_shell_is_offered_names_from_the_data_and_the_folder(string line, string offered)
    {
        (_, string output, _) = Command.RunIn(TestLaw.DemoFolder, $"[suggest:{line.Length}]", line);
        Assert.Contains(offered, output.Split('\n').Select(l => l.Trim()));
    }
}

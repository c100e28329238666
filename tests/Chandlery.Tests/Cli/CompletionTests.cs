using Chandlery.Cli;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Cli;

/// <summary>What a shell is offered, by where the cursor stands; a bar in a line is the cursor.</summary>
public sealed class CompletionTests
{
    private static IReadOnlyList<string> Offered(string line)
    {
        int cursor = line.IndexOf('|', StringComparison.Ordinal);
        return Offers.For(CommandTree.Build(), TypedLine.Read(line.Remove(cursor, 1), cursor));
    }

    /// <summary>A path of the demo, as it is typed.</summary>
    private static string At(string line) => line.Replace("DEMO", TestLaw.DemoFolder, StringComparison.Ordinal);

    [Theory]
    [InlineData("chandlery lab|", "label")]
    [InlineData("chandlery   lab|", "label")]
    [InlineData("./bin/chandlery lab|", "label")]
    [InlineData("chandlery lab| --out x", "label")]
    [InlineData("chandlery label --plac| DE DEMO", "--place")]
    [InlineData("chandlery register ver|", "verify")]
    [InlineData("chandlery register v|", "verify")]
    [InlineData("chandlery dispatches l|", "list")]
    [InlineData("chandlery statements de|", "de")]
    [InlineData("chandlery label DEMO/candles/harb|", "DEMO/candles/harbour-bowl.yaml")]
    [InlineData("chandlery label DEMO/candles/harb| --place DE", "DEMO/candles/harbour-bowl.yaml")]
    [InlineData("chandlery label DEMO/candles/fig-tin.yaml DEMO/candles/sla|", "DEMO/candles/slate-jar.yaml")]
    [InlineData("chandlery label DEMO/candles/fig-tin.yaml DEMO/candles/fig-|", "DEMO/candles/fig-melts.yaml")]
    [InlineData("chandlery label 'DEMO/candles/harb|", "DEMO/candles/harbour-bowl.yaml")]
    [InlineData("chandlery label x --place D|", "DE DK")]
    [InlineData("chandlery label x --place=D|", "--place=DE --place=DK")]
    [InlineData("chandlery label x --place D|E", "DE DK")]
    [InlineData("chandlery listing x --language d|", "da de")]
    [InlineData("chandlery designs x --design s|", "seal strata")]
    [InlineData("chandlery designs x --piece li|", "lid")]
    [InlineData("chandlery sheet x --stock a4-2|", "a4-2x2 a4-2x4")]
    [InlineData("chandlery sheet --stock roll-2| DEMO/candles/fig-tin.yaml", "roll-203-100x75")]
    [InlineData("chandlery ceiling DEMO/candles/fig-tin.yaml --oil ce|", "cedar-smoke")]
    [InlineData("chandlery ceiling --oil ce| DEMO/candles/fig-tin.yaml", "cedar-smoke")]
    [InlineData("chandlery bench-sheet DEMO/candles/slate-jar.yaml --also fig-t|", "fig-tin=1")]
    [InlineData("chandlery blend DEMO --also ra|", "rain-on-slate")]
    [InlineData("chandlery blend DEMO --trial o|", "orchard-pier")]
    [InlineData("chandlery recall DEMO --lot cu|", "cups-26-10")]
    [InlineData("chandlery recall DEMO --batch hb|", "hb-2611")]
    [InlineData("chandlery label x --format |", "pdf png svg")]
    [InlineData("chandlery label x --for |", "people press archive")]
    [InlineData("chandlery card x --kind sh|", "shop")]
    [InlineData("chandlery ufi make I|", "IE IS IT")]
    [InlineData("chandlery completions |", "bash fish pwsh zsh")]
    [InlineData("chandlery label --h|", "--help")]
    [InlineData("chandlery nothing-such |", "")]
    [InlineData("chan|", "")]
    public void At_the_cursor_stands_what_goes_on_there_and_no_more(string line, string offered)
    {
        string typed = At(line);
        int cursor = typed.IndexOf('|', StringComparison.Ordinal);
        (_, string output, _) = Command.RunHere($"[suggest:{cursor}]", typed.Remove(cursor, 1));
        Assert.Equal(At(offered).Split(' ', StringSplitOptions.RemoveEmptyEntries).Order(StringComparer.Ordinal), Lines(output));
    }

    [Fact]
    public void What_is_offered_begins_with_what_is_typed_in_every_command()
    {
        foreach (System.CommandLine.Command command in CommandTree.Build().Subcommands)
        {
            Assert.All(Offered($"chandlery {command.Name} --p|"), o => Assert.StartsWith("--p", o, StringComparison.Ordinal));
            Assert.Contains("--help", Offered($"chandlery {command.Name} -|"));
            Assert.DoesNotContain(Offered($"chandlery {command.Name} |"), o => o is "-?" or "/?" or "-h" or "/h");
        }
    }

    // A shell that knows no blanks at a line's end says that the cursor stands behind it.
    [Fact]
    public void A_cursor_behind_the_end_begins_a_new_word()
    {
        string[] register = [.. Lines(Command.RunHere("[suggest:19]", "chandlery register").Output)];
        Assert.Contains("verify", register);
        Assert.DoesNotContain("register", register);
    }

    [NeedsToolFact("bash")]
    public void In_bash_the_script_offers_the_same()
    {
        using Tool tool = WithNightFig();
        const string Script = """
            chandlery() { "${program[@]}" "$@"; }
            eval "$(chandlery completions bash)"
            # line before the cursor, words as bash parts them, index of the word at the cursor
            at() {
              COMP_LINE="$1"; COMP_POINT=${#1}; COMP_CWORD=$2; shift 2; COMP_WORDS=("$@"); COMPREPLY=()
              _chandlery
              printf '%s;' "${COMPREPLY[@]}"; echo
            }
            at 'chandlery register ver' 2 chandlery register ver
            at 'chandlery label x --place=D' 5 chandlery label x --place = D
            at 'chandlery label x --place=' 4 chandlery label x --place =
            at 'chandlery label my\ shed/ca' 2 chandlery label 'my\ shed/ca'
            at 'chandlery label "my shed/ca' 2 chandlery label '"my shed/ca'
            at 'chandlery label x --out ' 4 chandlery label x --out ''
            """;
        string[] said = tool.Run("bash", "-c", $"program=({Quoted})\n{Script}").Split('\n');
        Assert.Equal("verify;", said[0]);
        Assert.Equal("DE;DK;", said[1]);
        Assert.StartsWith("AT;AU;BE;", said[2], StringComparison.Ordinal);
        Assert.Equal(@"my\ shed/candles/night\ fig.yaml;", said[3]);
        Assert.Equal("my shed/candles/night fig.yaml;", said[4]);
        // Nothing: the shell itself offers folders.
        Assert.Equal(";", said[5]);
    }

    // What zsh's own completion gives to the script and takes from it stands for zsh's; what a person sees was tried in a terminal.
    [NeedsToolFact("zsh")]
    public void In_zsh_the_script_offers_the_same()
    {
        using Tool tool = WithNightFig();
        const string Script = """
            compdef() { }
            compadd() { print -rl -- "${(@P)2}" }
            _files() { print files }
            chandlery() { "${program[@]}" "$@" }
            eval "$(chandlery completions zsh)"
            # words as typed, the last cut at the cursor
            at() { words=("$@"); CURRENT=$#; PREFIX="${words[-1]}"; _chandlery | tr '\n' ';'; print }
            at chandlery register ver
            at chandlery label x --place D
            at chandlery label 'my\ shed/ca'
            at chandlery label x --out ''
            """;
        string[] said = tool.Run("zsh", "-f", "-c", $"program=({Quoted})\n{Script}").Split('\n');
        Assert.Equal(["verify;", "DE;DK;", "my shed/candles/night fig.yaml;", "files;"], said[..4]);
    }

    [NeedsToolFact("fish")]
    public void In_fish_the_script_offers_the_same()
    {
        using Tool tool = WithNightFig();
        string script = $"""
            set -x HOME {tool.Folder}
            function chandlery; {Quoted} $argv; end
            chandlery completions fish | source
            for line in 'chandlery register ver' 'chandlery label x --place=D' 'chandlery label my\ shed/candles/n'
              string join ';' -- (complete -C $line); or true
            end
            """;
        string[] said = tool.Run("fish", "-N", "-c", script).Split('\n');
        Assert.Equal(["verify", "--place=DE;--place=DK", "my shed/candles/night fig.yaml"], said[..3]);
    }

    private static Tool WithNightFig()
    {
        var tool = new Tool();
        Directory.CreateDirectory(Path.Combine(tool.Folder, "my shed", "candles"));
        File.WriteAllText(Path.Combine(tool.Folder, "my shed", "candles", "night fig.yaml"), "");
        return tool;
    }

    private static string Quoted => string.Join(' ', Command.Program.Select(p => $"'{p}'"));

    private static IEnumerable<string> Lines(string output) =>
        output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => l.Trim()).Order(StringComparer.Ordinal);
}

using System.Text.Json;
using Chandlery.Cli;
using Chandlery.Cli.Answers;
using Chandlery.Register;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Cli;

/// <summary>What commands say to programs fits the schemas that other programs get.</summary>
public sealed class AnswerTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("chandlery-answers-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    /// <summary>Commands as they are given; DEMO stands for the demo's folder.</summary>
    public static TheoryData<string, string> Commands() =>
        new()
        {
            { "arrange", "arrange DEMO/candles" },
            { "bench-sheet", "bench-sheet DEMO/candles --count 2" },
            { "blend", "blend DEMO --trial orchard-pier --keep no-class" },
            { "catalogue", "catalogue DEMO" },
            { "ceiling", "ceiling DEMO/candles" },
            { "ceiling", "ceiling DEMO/candles/harbour-bowl.yaml --oil cedar-smoke" },
            { "changes", "changes DEMO --to-as-of 2028-02-01" },
            { "cost", "cost DEMO" },
            { "designs", "designs DEMO/candles/fig-tin.yaml --list" },
            { "dispatches list", "dispatches list DEMO" },
            { "dispatches list", "dispatches list DEMO --as-of 2060-01-01" },
            { "duties", "duties DEMO" },
            { "incidents", "incidents DEMO" },
            { "kinds", "kinds" },
            { "listing", "listing DEMO/candles/fig-tin.yaml" },
            { "packaging", "packaging DEMO" },
            { "recall", "recall DEMO --lot CS-1107" },
            { "safety-sheet", "safety-sheet DEMO" },
            { "sets", "sets DEMO" },
            { "statements", "statements de" },
            { "stores", "stores DEMO" },
            { "substance", "substance linalool" },
            { "substance", "substance 78-70-6 --in DEMO" },
            { "technical-file", "technical-file DEMO" },
            { "tests", "tests DEMO" },
            { "trace", "trace DEMO load" },
            { "trials", "trials DEMO" },
            { "ufi check", "ufi check R3NN-3KVT-2XSG-W43J" },
            { "ufi make", "ufi make DE 123456789 268435455" },
            { "version", "version" },
            { "version memory", "version --memory" },
            { "weighing", "weighing DEMO" },
            { "wicks", "wicks DEMO/candles" },
        };

    [Theory]
    [MemberData(nameof(Commands))]
    public void An_answer_fits_its_schema(string command, string line) =>
        Fits(command, line.Split(' ').Select(w => w.Replace("DEMO", TestLaw.DemoFolder, StringComparison.Ordinal)));

    [Fact]
    public void A_measured_label_and_a_register_fit_theirs_too()
    {
        string candle = Path.Combine(TestLaw.DemoFolder, "candles", "fig-tin.yaml");
        Assert.Equal(0, Command.Run("label", candle, "--place", "IE", "--out", folder).Code);
        Fits("measure", ["measure", Directory.GetFiles(folder, "*.pdf")[0], candle, "--place", "IE"]);
        string register = Path.Combine(folder, RegisterWriter.FileName);
        Fits("register add", ["register", "add", candle, "--by", "me", "--register", register]);
        Fits("register find", ["register", "find", register]);
        Fits("register verify", ["register", "verify", register]);
    }

    [Fact]
    [Outside("CLP Annex VIII, Part A, 5; published example: R3NN-3KVT-2XSG-W43J holds DE 123456789 and formulation 268435455")]
    public void A_ufi_is_told_with_what_it_holds()
    {
        (_, string text, _) = Command.Run("ufi", "check", "r3nn3kvt2xsgw43j", "--json");
        JsonElement answer = JsonDocument.Parse(text).RootElement;
        Assert.Equal("R3NN-3KVT-2XSG-W43J", answer.GetProperty("ufi").GetString());
        Assert.Equal("DE", answer.GetProperty("country").GetString());
        Assert.Equal("123456789", answer.GetProperty("vatValue").GetString());
        Assert.Equal(268435455, answer.GetProperty("formulationNumber").GetInt64());
        (int code, string none, string why) = Command.Run("ufi", "check", "R3NN-3KVT-2XSG-W43K", "--json");
        Assert.Equal((ExitCode.BadInput, ""), (code, none));
        Assert.NotEmpty(why);
    }

    [Fact]
    public void A_draft_is_told_alone()
    {
        string pdf = Directory
            .GetFiles(Path.Combine(TestLaw.Repository, "tests", "Chandlery.Sheets", "pdf"), "*.pdf")
            .Order(StringComparer.Ordinal)
            .First();
        string yaml = Path.Combine(folder, "drafted.yaml");
        Fits("draft", ["draft", pdf, "--out", yaml, "--review-pages", Path.Combine(folder, "pages")]);
        Assert.True(File.Exists(yaml));
    }

    private static void Fits(string command, IEnumerable<string> arguments)
    {
        (int code, string output, string errors) = Command.Run([.. arguments, "--json"]);
        Assert.True(code is ExitCode.Fine or ExitCode.StopsSale, errors);
        using JsonDocument answer = JsonDocument.Parse(output);
        Assert.True(answer.RootElement.ValueKind != JsonValueKind.Array || answer.RootElement.GetArrayLength() > 0, output);
        Schema.Fulfils(AnswerSchemas.NameOf(command), answer.RootElement);
    }

    [Fact]
    public void Every_command_that_answers_programs_has_a_schema()
    {
        List<string> answering = [.. Answering(CommandTree.Build(), "")];
        Assert.Equal(
            AnswerSchemas.All().Select(s => s.Command).Where(c => c != "version memory").Order(StringComparer.Ordinal),
            answering.Where(c => c != "assess").Order(StringComparer.Ordinal)
        );
        Assert.Equal(
            AnswerSchemas.All().Select(s => s.Command).Order(StringComparer.Ordinal),
            Commands()
                .Select(c => (string)c[0])
                .Concat(["draft", "measure", "register add", "register find", "register verify"])
                .Distinct()
                .Order(StringComparer.Ordinal)
        );
    }

    private const string Writes = "it writes files that are named one a line, and tells nothing else";
    private const string Prints = "it prints papers of what 'assess' tells";

    /// <summary>Commands that do not answer programs, each with the reason.</summary>
    private static readonly Dictionary<string, string> Silent = new()
    {
        ["card"] = Prints,
        ["completions"] = "it prints a shell's script",
        ["dispatches forget"] = Writes,
        ["dossier"] = "it writes the assessment as JSON beside its papers",
        ["export"] = "it is CSV or JSON itself",
        ["import"] = Writes,
        ["label"] = Prints + ", and 'measure' tells of the print",
        ["manual"] = "it prints the manual page",
        ["new"] = Writes,
        ["procedure"] = "it prints a page of what 'duties' tells",
        ["reference"] = "it prints the reference",
        ["register backup"] = Writes,
        ["register document"] = Writes,
        ["register move"] = "it carries a register over; 'register verify' tells of it",
        ["register rebuild"] = "it mends a register; 'register verify' tells of it",
        ["schemas"] = Writes,
        ["sheet"] = Prints,
        ["workbench"] = "it serves the page",
    };

    [Fact]
    public void A_command_answers_programs_or_there_is_a_reason_why_not()
    {
        IEnumerable<string> all = Leaves(CommandTree.Build(), "");
        Assert.Equal(
            all.Except(Answering(CommandTree.Build(), "")).Order(StringComparer.Ordinal),
            Silent.Keys.Order(StringComparer.Ordinal)
        );
    }

    [Theory]
    [InlineData("bench-sheet", "fig-tin-bench-sheet.pdf")]
    [InlineData("safety-sheet", "fig-tin-safety-sheet.pdf")]
    [InlineData("technical-file", "fig-tin-technical-file.pdf")]
    [InlineData("wicks", "fig-tin-wick-template.pdf")]
    public void Facts_alone_write_no_paper_and_with_a_folder_the_answer_still_stands_alone(string command, string paper)
    {
        string candle = Path.Combine(TestLaw.DemoFolder, "candles", "fig-tin.yaml");
        (int code, string output, string errors) = Command.RunIn(folder, command, candle, "--place", "IE", "--json");
        Assert.Equal((0, ""), (code, errors));
        Assert.Empty(Directory.GetFileSystemEntries(folder));
        string into = Path.Combine(folder, "out");
        (_, string beside, errors) = Command.RunIn(folder, command, candle, "--place", "IE", "--json", "--out", into);
        Assert.Equal(output, beside);
        Assert.True(File.Exists(Path.Combine(into, paper)), errors);
        Assert.Contains(paper, errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_a_record_is_written_beside_an_answer_its_name_is_told_apart()
    {
        (int code, string output, string errors) = Command.Run("packaging", TestLaw.DemoFolder, "--json", "--out", folder);
        Assert.True(code is ExitCode.Fine, errors);
        using JsonDocument answer = JsonDocument.Parse(output);
        Assert.Contains("packaging.pdf", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_told_of_a_candle_is_what_its_papers_say()
    {
        string demo = TestLaw.DemoFolder;
        JsonElement Of(params string[] command) => JsonDocument.Parse(Command.Run([.. command, "--json"]).Output).RootElement[0];
        JsonElement due = Of("safety-sheet", Path.Combine(demo, "candles", "harbour-bowl.yaml"), "--place", "DE");
        Assert.Equal("withDelivery", due.GetProperty("due").GetString());
        Assert.All(due.GetProperty("reasons").EnumerateArray(), r => Assert.NotEmpty(r.GetProperty("clause").GetString()!));
        JsonElement file = Of("technical-file", Path.Combine(demo, "candles", "harbour-bowl.yaml"), "--place", "DE");
        Assert.Contains(
            file.GetProperty("missing").EnumerateArray(),
            m => m.GetString()!.StartsWith("An open incident touches the risk wind", StringComparison.Ordinal)
        );
        Assert.Equal("2036-11-19", file.GetProperty("keep")[0].GetProperty("until").GetString());
        Assert.Contains(
            file.GetProperty("risks").EnumerateArray(),
            r => r.GetProperty("risk").GetString() == "wind" && r.GetProperty("isInQuestion").GetBoolean()
        );
        JsonElement bench = Of("bench-sheet", Path.Combine(demo, "candles", "quay-tea-lights.yaml"), "--count", "2", "--waste", "0");
        Assert.Equal(336, bench.GetProperty("totalGrams").GetDouble(), 6);
        JsonElement size = bench.GetProperty("sizes")[0];
        Assert.Equal(
            (2, 12, 14.0),
            (size.GetProperty("count").GetInt32(), size.GetProperty("pieces").GetInt32(), size.GetProperty("firstGrams").GetDouble())
        );
    }

    private static IEnumerable<string> Leaves(System.CommandLine.Command command, string name) =>
        command.Subcommands.Count == 0 ? [name] : command.Subcommands.SelectMany(c => Leaves(c, $"{name} {c.Name}".Trim()));

    private static IEnumerable<string> Answering(System.CommandLine.Command command, string name) =>
        command
            .Subcommands.SelectMany(c => Answering(c, $"{name} {c.Name}".Trim()))
            .Concat(command.Options.Any(o => o.Name == "--json") ? [name] : []);
}

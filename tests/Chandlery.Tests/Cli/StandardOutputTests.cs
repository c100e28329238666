using System.Diagnostics;
using System.Text;
using Chandlery.Cli;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Cli;

/// <summary><c>--out -</c>: the one document of a command goes to the standard output, and nothing else does.</summary>
public sealed class StandardOutputTests : IDisposable
{
    private static readonly string Tin = Path.Combine(TestLaw.DemoFolder, "candles", "fig-tin.yaml");
    private readonly string folder = Directory.CreateTempSubdirectory("chandlery-out-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private static (int Code, byte[] Output, string Errors) Piped(params string[] arguments)
    {
        using Process process = Command.Start("", arguments);
        Task<string> errors = process.StandardError.ReadToEndAsync();
        using var output = new MemoryStream();
        process.StandardOutput.BaseStream.CopyTo(output);
        process.WaitForExit();
        return (process.ExitCode, output.ToArray(), errors.Result);
    }

    [Trait("Program", "published")]
    [Theory]
    [InlineData("label", "%PDF-")]
    [InlineData("label --format png", "\u0089PNG")]
    [InlineData("card", "%PDF-")]
    [InlineData("safety-sheet", "%PDF-")]
    [InlineData("technical-file", "%PDF-")]
    [InlineData("bench-sheet", "%PDF-")]
    [InlineData("sheet --stock a4-3x4-circles-60", "%PDF-")]
    [InlineData("duties", "%PDF-")]
    public void A_single_document_goes_there_as_it_would_go_into_a_file(string command, string begins)
    {
        string[] words = [.. command.Split(' '), Tin, "--place", "IE"];
        (int code, byte[] output, string errors) = Piped([.. words, "--out", "-"]);
        Assert.True(code is ExitCode.Fine or ExitCode.StopsSale, errors);
        Assert.StartsWith(begins, Encoding.Latin1.GetString(output), StringComparison.Ordinal);
        Command.Run([.. words, "--out", folder]);
        string ending = begins == "%PDF-" ? "*.pdf" : "*.png";
        Assert.Contains(Directory.EnumerateFiles(folder, ending).Select(File.ReadAllBytes), file => file.SequenceEqual(output));
        Assert.False(Directory.Exists("-"));
    }

    [Theory]
    [InlineData("tests")]
    [InlineData("incidents")]
    [InlineData("weighing")]
    public void Records_of_a_folder_go_there_and_their_tables_to_the_error_stream(string command)
    {
        (_, byte[] output, string errors) = Piped(command, TestLaw.DemoFolder, "--out", "-");
        Assert.StartsWith("%PDF-", Encoding.Latin1.GetString(output), StringComparison.Ordinal);
        Assert.NotEqual("", errors);
    }

    [Fact]
    public void Quiet_still_writes_the_document()
    {
        (_, byte[] output, string errors) = Piped("label", Tin, "--place", "IE", "--out", "-", "--quiet");
        Assert.StartsWith("%PDF-", Encoding.Latin1.GetString(output), StringComparison.Ordinal);
        Assert.Equal("", errors);
    }

    [Theory]
    [InlineData("dossier")]
    [InlineData("label --format pdf,png")]
    [InlineData("label --proof")]
    [InlineData("safety-sheet --place BE")]
    public void Several_documents_are_refused_with_their_names(string command)
    {
        (int code, byte[] output, string errors) = Piped([.. command.Split(' '), Tin, "--out", "-"]);
        Assert.Equal(ExitCode.BadInput, code);
        Assert.Empty(output);
        Assert.Contains("'--out -' takes one document, and there are several (", errors, StringComparison.Ordinal);
        Assert.Contains("fig-tin", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Bytes_are_not_shown_on_a_terminal()
    {
        (int code, string output, string errors) = Command.RunHere("label", Tin, "--place", "IE", "--out", "-");
        Assert.Equal((ExitCode.BadInput, ""), (code, output));
        Assert.Contains("bytes that no terminal can show", errors, StringComparison.Ordinal);
        Assert.Contains(
            "<svg",
            Command.RunHere("label", Tin, "--place", "IE", "--format", "svg", "--out", "-").Output,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("listing --language en")]
    [InlineData("export")]
    public void Text_is_the_same_with_and_without_it(string command)
    {
        string[] words = [.. command.Split(' '), Tin];
        string plain = Command.RunHere(words).Output;
        Assert.NotEqual("", plain);
        Assert.Equal(plain, Command.RunHere([.. words, "--out", "-"]).Output);
        string file = Path.Combine(folder, "text");
        Assert.Equal(file, Command.RunHere([.. words, "--out", file]).Output.Trim());
        Assert.Equal(plain, File.ReadAllText(file));
    }

    [Fact]
    public void A_draft_goes_there_and_what_is_to_review_does_not()
    {
        string pdf = Path.Combine(TestLaw.Repository, "tests", "Chandlery.Sheets", "pdf", "night-fig.own-lines-en.pdf");
        (_, byte[] output, string errors) = Piped("draft", pdf, "--out", "-");
        string yaml = Encoding.UTF8.GetString(output);
        Assert.Contains("declares: oil", yaml, StringComparison.Ordinal);
        Assert.DoesNotContain("ingredients drafted", yaml, StringComparison.Ordinal);
        Assert.Contains("standard output:", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void The_register_answers_there_too()
    {
        string register = Path.Combine(folder, "register.sqlite");
        string batch = Path.Combine(TestLaw.DemoFolder, "batches", "hb-2611.yaml");
        Assert.Equal(0, Command.RunHere("register", "add", batch, "--by", "me", "--register", register).Code);
        string plain = Command.RunHere("register", "find", register, "--format", "csv").Output;
        Assert.NotEqual("", plain);
        Assert.Equal(plain, Command.RunHere("register", "find", register, "--format", "csv", "--out", "-").Output);
    }

    [Fact]
    public void The_register_says_its_one_way_to_json()
    {
        (int code, _, string errors) = Command.Run("register", "find", "x", "--format", "json");
        Assert.Equal(ExitCode.BadInput, code);
        Assert.Contains("'json' is nothing that '--format' takes:", errors, StringComparison.Ordinal);
        Assert.Contains("For JSON write --json.", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_listing_is_json_by_its_format_too()
    {
        string candle = Path.Combine(TestLaw.DemoFolder, "candles", "fig-tin.yaml");
        string json = Command.RunHere("listing", candle, "--json").Output;
        Assert.StartsWith("[", json, StringComparison.Ordinal);
        Assert.Equal(json, Command.RunHere("listing", candle, "--format", "json").Output);
    }
}

using System.Text.Json;
using Chandlery.Cli;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Cli;

/// <summary>The command that prints the law's statements, and labels in languages that lack one.</summary>
public sealed class StatementsCommandTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("chandlery-test-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Outside("CLP Annex III, Part 1, H317 (consolidated text of 1 September 2025), Hungarian text")]
    [Fact]
    public void Programs_get_every_text_with_its_source()
    {
        (int code, string output, string errors) = Command.Run("statements", "hu", "--json");
        Assert.Equal((ExitCode.Fine, ""), (code, errors));
        using JsonDocument document = JsonDocument.Parse(output);
        JsonElement statement = document.RootElement.GetProperty("H317");
        Assert.Equal("Allergiás bőrreakciót válthat ki.", statement.GetProperty("text").GetString());
        Assert.Contains("1272/2008", statement.GetProperty("source").GetString(), StringComparison.Ordinal);
        Assert.True(statement.GetProperty("verified").GetBoolean());
        string[] codes = [.. document.RootElement.EnumerateObject().Select(p => p.Name)];
        Assert.Equal(codes.Order(StringComparer.Ordinal), codes);
        Assert.Equal(TestLaw.Lawbook.FindLanguage("hu")!.Official.Count, codes.Length);
    }

    [Fact]
    public void What_is_not_sure_says_so()
    {
        using JsonDocument document = JsonDocument.Parse(Command.Run("statements", "hu", "--json").Output);
        Assert.False(document.RootElement.GetProperty("P210").GetProperty("verified").GetBoolean());
        string table = Command.Run("statements", "hu").Output;
        Assert.Contains("compare before you print", table, StringComparison.Ordinal);
        Assert.Matches("P210 +no ", table);
        Assert.Matches("H317 +yes ", table);
    }

    [Theory]
    [InlineData("hy", "There are no texts in the language 'hy'. Did you mean 'hr'?")]
    [InlineData("no", "There are no texts in the language 'no': Norway publishes")]
    public void A_language_without_texts_is_refused_in_words(string language, string expected)
    {
        (int code, string output, string errors) = Command.Run("statements", language);
        Assert.Equal((ExitCode.BadInput, ""), (code, output));
        Assert.StartsWith(expected, errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_place_whose_language_has_no_texts_is_refused_with_the_reason()
    {
        string candle = Path.Combine(TestLaw.DemoFolder, "candles", "slate-jar.yaml");
        (int code, _, string errors) = Command.Run("assess", candle, "--place", "IS");
        Assert.Equal(ExitCode.BadInput, code);
        Assert.Contains("Iceland publishes the statements in an act of its own", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_label_is_refused_in_a_language_that_lacks_one_of_its_statements()
    {
        CopyDemo();
        Change("oils/fig-leaf.yaml", "classes: [\"Aquatic Chronic 3, H412\"]", "classes: [\"Repr. 1B, H360F\"]");
        Change("candles/fig-tin.yaml", "soldIn: [IE]", "soldIn: [IE]\nlanguages: [en, ga]");
        (int code, _, string errors) = Command.Run("label", Path.Combine(folder, "candles", "fig-tin.yaml"), "--out", folder);
        Assert.Equal(ExitCode.BadInput, code);
        Assert.Contains("There is no text in Gaeilge of H360F, which the label must print", errors, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(folder, "*.pdf"));
    }

    private void CopyDemo()
    {
        foreach (string file in Directory.EnumerateFiles(TestLaw.DemoFolder, "*.yaml", SearchOption.AllDirectories))
        {
            string target = Path.Combine(folder, Path.GetRelativePath(TestLaw.DemoFolder, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }
    }

    private void Change(string file, string from, string to)
    {
        string path = Path.Combine(folder, file);
        string text = File.ReadAllText(path);
        Assert.Contains(from, text, StringComparison.Ordinal);
        File.WriteAllText(path, text.Replace(from, to, StringComparison.Ordinal));
    }
}

using System.Text;
using Chandlery.Tests.Support;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Chandlery.Tests.Cli;

/// <summary>The option that says what a PDF is for.</summary>
public class PurposeTests
{
    private static readonly string Bowl = Path.Combine(TestLaw.DemoFolder, "candles", "harbour-bowl.yaml");

    [Theory]
    [InlineData("label", "people", "%PDF-1.7")]
    [InlineData("label", "press", "%PDF-1.3")]
    [InlineData("card", "archive", "%PDF-1.7")]
    public void Each_purpose_has_its_own_kind_of_file(string command, string purpose, string start)
    {
        using var tool = new Tool();
        (int code, _, string errors) = Command.Run(command, Bowl, "--for", purpose, "--place", "IE", "--out", tool.Folder);
        Assert.True(code == 0, errors);
        string file = Assert.Single(Directory.EnumerateFiles(tool.Folder, "*.pdf"));
        Assert.StartsWith(start, Encoding.Latin1.GetString(File.ReadAllBytes(file)), StringComparison.Ordinal);
    }

    [Fact]
    public void An_archives_file_has_declarations_and_assessment_inside()
    {
        using var tool = new Tool();
        (int code, _, string errors) = Command.Run(
            "sheet",
            Bowl,
            "--stock",
            "a4-2x2",
            "--for",
            "archive",
            "--place",
            "IE",
            "--out",
            tool.Folder
        );
        Assert.True(code == 0, errors);
        using PdfDocument pdf = PdfDocument.Open(Directory.EnumerateFiles(tool.Folder, "*.pdf").Single());
        Assert.True(pdf.Advanced.TryGetEmbeddedFiles(out IReadOnlyList<EmbeddedFile>? files));
        EmbeddedFile candle = Assert.Single(files!, f => f.Name == "candles/harbour-bowl.yaml");
        Assert.Equal(File.ReadAllText(Bowl), Encoding.UTF8.GetString(candle.Memory.Span));
        Assert.Contains(files!, f => f.Name == "maker.yaml");
        Assert.Contains(files!, f => f.Name == "oils/fig-leaf.yaml");
        EmbeddedFile assessment = Assert.Single(files!, f => f.Name == "assessment-harbour-bowl-eu-clp.json");
        Assert.Contains("\"Harbour Bowl\"", Encoding.UTF8.GetString(assessment.Memory.Span), StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_purpose_is_refused_with_those_that_there_are()
    {
        (int code, _, string errors) = Command.Run("label", Bowl, "--for", "printer");
        Assert.NotEqual(0, code);
        Assert.Contains("'printer' is nothing that a PDF is made for: write people, press or archive.", errors, StringComparison.Ordinal);
    }
}

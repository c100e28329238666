using System.Text;
using Chandlery.Cli;
using Chandlery.Tests.Sheets;
using Chandlery.Tests.Support;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Chandlery.Tests.Cli;

/// <summary>Labels of candles of several paths and folders on the same sheets.</summary>
public sealed class SheetPathsTests
{
    private static string Demo(string candle) => Path.Combine(TestLaw.DemoFolder, "candles", candle + ".yaml");

    private static (int Code, string Errors, byte[] Pdf) Print(Tool tool, params string[] arguments)
    {
        (int code, _, string errors) = Command.Run(["sheet", .. arguments, "--stock", "a4-2x2", "--place", "IE", "--out", tool.Folder]);
        string[] files = [.. Directory.EnumerateFiles(tool.Folder, "*.pdf")];
        return (code, errors, files.Length == 1 ? File.ReadAllBytes(files[0]) : []);
    }

    [Fact]
    public void Candles_of_several_paths_stand_on_one_sheet()
    {
        using var tool = new Tool();
        using var other = new MakersFolder();
        other
            .Change("candles/slate-jar.yaml", "name: Slate Jar", "name: Other Jar")
            .Change("maker.yaml", "Tarnvey Candle Shed", "Second Shed");
        (int code, string errors, byte[] pdf) = Print(
            tool,
            Demo("fig-tin"),
            Demo("slate-jar"),
            Path.Combine(other.Path, "candles", "slate-jar.yaml")
        );
        Assert.True(code == ExitCode.Fine, errors);
        using PdfDocument read = PdfDocument.Open(pdf);
        Assert.Equal(1, read.NumberOfPages);
        string text = PrintedText.Of(pdf);
        Assert.Contains("Fig", text, StringComparison.Ordinal);
        Assert.Contains("Slate Jar", text, StringComparison.Ordinal);
        Assert.Contains("Other Jar", text, StringComparison.Ordinal);
        Assert.Contains("Tarnvey Candle Shed", text, StringComparison.Ordinal);
        Assert.Contains("Second Shed", text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_archive_keeps_the_files_of_each_folder_apart()
    {
        using var tool = new Tool();
        using var other = new MakersFolder();
        other.Change("maker.yaml", "Tarnvey Candle Shed", "Second Shed");
        (int code, string errors, byte[] pdf) = Print(
            tool,
            Demo("slate-jar"),
            Path.Combine(other.Path, "candles", "slate-jar.yaml"),
            "--for",
            "archive"
        );
        Assert.True(code == ExitCode.Fine, errors);
        using PdfDocument read = PdfDocument.Open(pdf);
        Assert.True(read.Advanced.TryGetEmbeddedFiles(out IReadOnlyList<EmbeddedFile>? files));
        string Maker(string name) => Encoding.UTF8.GetString(Assert.Single(files!, f => f.Name == name).Memory.Span);
        Assert.Contains("Tarnvey Candle Shed", Maker("1/maker.yaml"), StringComparison.Ordinal);
        Assert.Contains("Second Shed", Maker("2/maker.yaml"), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_wrong_with_one_path_does_not_hide_the_others()
    {
        using var tool = new Tool();
        (int code, string errors, byte[] pdf) = Print(tool, Demo("fig-tin"), Demo("no-such"));
        Assert.Equal(ExitCode.BadInput, code);
        Assert.Contains("There is no such file or folder", errors, StringComparison.Ordinal);
        Assert.Contains("Fig", PrintedText.Of(pdf), StringComparison.Ordinal);
    }
}

using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Files;
using Chandlery.Yaml;

namespace Chandlery.Tests.Support;

/// <summary>A copy of the demo's folder that a test may change.</summary>
internal sealed class MakersFolder : IDisposable
{
    public MakersFolder()
    {
        IEnumerable<string> files = Directory
            .GetFiles(TestLaw.DemoFolder, "*", SearchOption.AllDirectories)
            .Where(f => System.IO.Path.GetExtension(f) is ".yaml" or ".svg");
        foreach (string file in files)
        {
            Write(System.IO.Path.GetRelativePath(TestLaw.DemoFolder, file), File.ReadAllText(file));
        }
    }

    public string Path { get; } = Directory.CreateTempSubdirectory("chandlery-maker-").FullName;

    public Catalogue Catalogue => Open().Catalogue;

    public void Dispose() => Directory.Delete(Path, recursive: true);

    public MakersFolder Write(string file, string text)
    {
        string path = System.IO.Path.Combine(Path, file);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return this;
    }

    /// <summary>Puts another text where one stands.</summary>
    public MakersFolder Change(string file, string from, string to)
    {
        string text = File.ReadAllText(System.IO.Path.Combine(Path, file));
        Assert.Contains(from, text, StringComparison.Ordinal);
        return Write(file, text.Replace(from, to, StringComparison.Ordinal));
    }

    public string Read(string file) => File.ReadAllText(System.IO.Path.Combine(Path, file));

    /// <summary>The assessment of a candle or batch at a place.</summary>
    public Assessment Assess(string id, string place, DateOnly? day = null)
    {
        Catalogue catalogue = Catalogue;
        var problems = new Problems();
        Assessment a = new Assessor(TestLaw.Lawbook, catalogue, day ?? TestLaw.Today).Assess(
            catalogue.All.First(d => d.Id == id && (d is Candle or Batch)),
            place,
            problems
        )[0];
        Assert.Empty(problems.Found);
        return a;
    }

    private DeclarationFolder Open()
    {
        DeclarationFolder folder = DeclarationFolder.Open(Path, TestLaw.Lawbook.Vocabulary);
        Assert.Empty(folder.Problems.Found);
        return folder;
    }
}

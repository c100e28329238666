using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Declared;
using Chandlery.Files;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Files;

/// <summary>Symbolic links: nothing outside the folder is read through one, and none is written through.</summary>
public sealed class LinkTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("chandlery-links-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Links_out_of_the_folder_and_in_circles_are_passed_over()
    {
        string maker = Path.Combine(folder, "maker");
        Directory.CreateDirectory(maker);
        File.Copy(Path.Combine(TestLaw.DemoFolder, "maker.yaml"), Path.Combine(maker, "maker.yaml"));
        File.CreateSymbolicLink(Path.Combine(maker, "fig-tin.yaml"), Path.Combine(TestLaw.DemoFolder, "candles", "fig-tin.yaml"));
        Directory.CreateSymbolicLink(Path.Combine(maker, "circle"), maker);
        Catalogue read = DeclarationFolder.Open(maker, TestLaw.Lawbook.Vocabulary).Catalogue;
        Assert.IsType<Maker>(Assert.Single(read.All));
    }

    [Fact]
    public void A_link_that_is_asked_for_is_refused_in_words()
    {
        string link = Path.Combine(folder, "fig-tin.yaml");
        File.CreateSymbolicLink(link, Path.Combine(TestLaw.DemoFolder, "candles", "fig-tin.yaml"));
        Problem problem = Assert.Single(DeclarationFolder.Open(link, TestLaw.Lawbook.Vocabulary).Problems.Found);
        Assert.Contains("links are not followed", problem.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Writing_over_a_link_leaves_what_it_leads_to()
    {
        string precious = Path.Combine(folder, "precious.txt");
        string target = Path.Combine(folder, "label.txt");
        File.WriteAllText(precious, "keep");
        File.CreateSymbolicLink(target, precious);
        AtomicFile.Write(target, "new");
        Assert.Equal(("keep", "new"), (File.ReadAllText(precious), File.ReadAllText(target)));
        Assert.Empty(Directory.GetFiles(folder, "*.tmp"));
    }
}

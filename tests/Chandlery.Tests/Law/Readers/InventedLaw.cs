using Chandlery.Core.Law;
using Chandlery.Core.Law.Reading;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Law.Readers;

/// <summary>
/// A law that is true nowhere, in <c>Law/Readers/Invented</c>: small, and no two of its values are alike, so that a value that a reader
/// puts in the wrong place, or makes up, shows.
/// </summary>
internal static class InventedLaw
{
    private static readonly string[] Papers = ["label", "tag"];

    /// <summary>The folder of these tests.</summary>
    public static string Folder { get; } = Path.Combine(TestLaw.Repository, "tests", "Chandlery.Tests", "Law", "Readers");

    /// <summary>Its files by path, as the program's own data are given.</summary>
    public static IReadOnlyDictionary<string, string> Texts { get; } = ReadTexts();

    private static readonly Dictionary<string, ParsedFile> Parsed = Texts
        .Keys.Where(k => k.EndsWith(".yaml", StringComparison.Ordinal))
        .ToDictionary(k => k, k => ParsedFile.Of(Texts, k));

    /// <summary>A file as a tree.</summary>
    public static YamlMap Tree(string file) => Parsed[file].Map;

    /// <summary>The law as it stands.</summary>
    public static Lawbook Read()
    {
        (Lawbook? lawbook, Problems problems) = Read(Texts, null);
        Assert.Empty(problems.Found);
        return lawbook!;
    }

    /// <summary>What the law comes to with other texts.</summary>
    public static (Lawbook? Lawbook, Problems Problems) Read(IReadOnlyDictionary<string, string> texts) => Read(texts, null);

    /// <summary>What the law comes to when one tree is another.</summary>
    public static (Lawbook? Lawbook, Problems Problems) ReadWith(string file, YamlMap tree) =>
        Read(Texts, (file, new ParsedFile(tree, new Problems())));

    private static (Lawbook? Lawbook, Problems Problems) Read(
        IReadOnlyDictionary<string, string> texts,
        (string Path, ParsedFile File)? instead
    )
    {
        var problems = new Problems();
        Lawbook? lawbook = LawReader.Read(texts, Papers, problems, Parse);
        return (lawbook, problems);

        ParsedFile Parse(IReadOnlyDictionary<string, string> all, string path) =>
            instead is { } other && other.Path == path ? other.File
            : Parsed.TryGetValue(path, out ParsedFile? known) && ReferenceEquals(Texts[path], all[path]) ? known
            : ParsedFile.Of(all, path);
    }

    private static Dictionary<string, string> ReadTexts()
    {
        string root = Path.Combine(Folder, "Invented");
        return Directory
            .EnumerateFiles(root, "*", SearchOption.AllDirectories)
            .ToDictionary(f => Path.GetRelativePath(root, f).Replace('\\', '/'), File.ReadAllText);
    }
}

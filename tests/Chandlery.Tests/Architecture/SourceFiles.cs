using Chandlery.Tests.Support;

namespace Chandlery.Tests.Architecture;

/// <summary>The program's own source, as text.</summary>
internal static class SourceFiles
{
    /// <summary>Path below <c>src</c> with forward slashes, and text, of every C# file.</summary>
    public static IReadOnlyList<(string Path, string Text)> All { get; } =
    [
        .. Directory
            .EnumerateFiles(Path.Combine(TestLaw.Repository, "src"), "*.cs", SearchOption.AllDirectories)
            .Select(p => (Path: Path.GetRelativePath(Path.Combine(TestLaw.Repository, "src"), p).Replace('\\', '/'), File: p))
            .Where(p => !p.Path.Split('/').Any(part => part is "obj" or "bin"))
            .OrderBy(p => p.Path, StringComparer.Ordinal)
            .Select(p => (p.Path, File.ReadAllText(p.File))),
    ];

    /// <summary>The lines of a text without comments, with their numbers.</summary>
    public static IEnumerable<(int Line, string Text)> Code(string text) =>
        text.Split('\n')
            .Select((line, i) => (Line: i + 1, Text: line))
            .Where(l => !l.Text.TrimStart().StartsWith("//", StringComparison.Ordinal));
}

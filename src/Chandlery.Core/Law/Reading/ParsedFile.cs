using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>A data file as a tree.</summary>
/// <param name="Map">Its fields; none when it is no YAML.</param>
/// <param name="Problems">What is wrong with it as YAML.</param>
internal sealed record ParsedFile(YamlMap Map, Problems Problems)
{
    /// <summary>Parses a file.</summary>
    /// <param name="texts">Texts by path under <c>data/</c>.</param>
    /// <param name="path">The file's path.</param>
    /// <exception cref="KeyNotFoundException">There is no such file.</exception>
    public static ParsedFile Of(IReadOnlyDictionary<string, string> texts, string path)
    {
        string name = "data/" + path;
        var problems = new Problems();
        return new ParsedFile(YamlText.Read(texts, path, name, problems) ?? new YamlMap([], new TextPlace(name, 0, 0)), problems);
    }
}

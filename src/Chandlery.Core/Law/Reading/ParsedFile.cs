using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>A data file as a tree.</summary>
/// <param name="Map">Its fields; none when it is no YAML.</param>
/// <param name="Problems">What is wrong with it as YAML.</param>
internal sealed record ParsedFile(YamlMap Map, Problems Problems)
{
    /// <summary>Parses a file.</summary>
    /// <param name="path">Path under <c>data/</c>.</param>
    /// <param name="text">Its text.</param>
    public static ParsedFile Of(string path, string text)
    {
        string name = "data/" + path;
        var problems = new Problems();
        return new ParsedFile(YamlText.Read(text, name, problems) ?? new YamlMap([], new TextPlace(name, 0, 0)), problems);
    }
}

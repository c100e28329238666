namespace Chandlery.Yaml;

/// <summary>Texts by path of which some have been parsed before, when the program was built.</summary>
public interface IParsedDictionary : IReadOnlyDictionary<string, string>
{
    /// <summary>A text's tree, the same that <see cref="YamlText.Read(string, string, Problems)"/> gives; null when it has to be parsed.</summary>
    /// <param name="path">The text's path.</param>
    /// <param name="file">The file's name in the places of the tree.</param>
    YamlMap? Tree(string path, string file);
}

namespace Chandlery.Yaml;

/// <summary>A map in the order of the file.</summary>
public sealed record YamlMap(IReadOnlyList<YamlEntry> Entries, TextPlace Place) : YamlValue(Place);

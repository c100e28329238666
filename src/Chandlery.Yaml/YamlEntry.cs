namespace Chandlery.Yaml;

/// <summary>One field of a map.</summary>
public sealed record YamlEntry(string Key, TextPlace KeyPlace, YamlValue Value);

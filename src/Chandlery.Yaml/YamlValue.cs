namespace Chandlery.Yaml;

/// <summary>A piece of YAML with its place in the file.</summary>
public abstract record YamlValue(TextPlace Place);

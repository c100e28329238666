namespace Chandlery.Yaml;

/// <summary>A plain or quoted text.</summary>
public sealed record YamlScalar(string Text, bool Quoted, TextPlace Place) : YamlValue(Place);

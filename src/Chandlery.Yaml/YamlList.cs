namespace Chandlery.Yaml;

/// <summary>A list.</summary>
public sealed record YamlList(IReadOnlyList<YamlValue> Items, TextPlace Place) : YamlValue(Place);

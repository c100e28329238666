using Chandlery.Core.Declared;

namespace Chandlery.Core.Reading;

/// <summary>A piece of YAML with its place in the file.</summary>
internal abstract record YamlValue(TextPlace Place);

/// <summary>A plain or quoted text.</summary>
internal sealed record YamlScalar(string Text, bool Quoted, TextPlace Place) : YamlValue(Place);

/// <summary>A list.</summary>
internal sealed record YamlList(IReadOnlyList<YamlValue> Items, TextPlace Place) : YamlValue(Place);

/// <summary>One field of a map.</summary>
internal sealed record YamlEntry(string Key, TextPlace KeyPlace, YamlValue Value);

/// <summary>A map in the order of the file.</summary>
internal sealed record YamlMap(IReadOnlyList<YamlEntry> Entries, TextPlace Place) : YamlValue(Place);

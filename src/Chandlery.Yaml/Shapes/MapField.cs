namespace Chandlery.Yaml.Shapes;

/// <summary>A map of free names.</summary>
/// <param name="Key">Its name in the file.</param>
/// <param name="About">What it means.</param>
/// <param name="Value">What stands under each name.</param>
public sealed record MapField(string Key, string About, Field Value) : Field(Key, About);

namespace Chandlery.Yaml.Shapes;

/// <summary>What a field of a map is: readers take it by this and JSON Schemas are written from it.</summary>
/// <param name="Key">Its name in the file.</param>
/// <param name="About">What it means, a sentence or less; the unit stands in the name.</param>
public abstract record Field(string Key, string About)
{
    /// <summary>True when the map is wrong without it.</summary>
    public bool Needed { get; init; }
}

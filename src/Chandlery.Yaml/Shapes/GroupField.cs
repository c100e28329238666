namespace Chandlery.Yaml.Shapes;

/// <summary>A group of fields.</summary>
/// <param name="Key">Its name in the file.</param>
/// <param name="About">What it means.</param>
/// <param name="Shape">What stands in it.</param>
public sealed record GroupField(string Key, string About, Shape Shape) : Field(Key, About);

namespace Chandlery.Yaml.Shapes;

/// <summary>Yes or no.</summary>
/// <param name="Key">Its name in the file.</param>
/// <param name="About">What it means.</param>
public sealed record FlagField(string Key, string About) : Field(Key, About);

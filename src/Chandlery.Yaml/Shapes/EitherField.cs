namespace Chandlery.Yaml.Shapes;

/// <summary>A field that can be written in more than one way.</summary>
/// <param name="Key">Its name in the file.</param>
/// <param name="About">What it means.</param>
/// <param name="Ways">The ways; their own names do not count.</param>
public sealed record EitherField(string Key, string About, IReadOnlyList<Field> Ways) : Field(Key, About);

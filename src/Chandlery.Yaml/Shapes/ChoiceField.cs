namespace Chandlery.Yaml.Shapes;

/// <summary>One word of a fixed set.</summary>
/// <param name="Key">Its name in the file.</param>
/// <param name="About">What it means.</param>
/// <param name="Choices">The words.</param>
public sealed record ChoiceField(string Key, string About, IReadOnlyList<string> Choices) : Field(Key, About);

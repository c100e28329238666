namespace Chandlery.Yaml.Shapes;

/// <summary>A text that is not empty.</summary>
/// <param name="Key">Its name in the file.</param>
/// <param name="About">What it means.</param>
/// <param name="Example">What might stand there.</param>
public sealed record TextField(string Key, string About, string Example) : Field(Key, About)
{
    /// <summary>What the text must look like, a regular expression; null for anything.</summary>
    public string? Pattern { get; init; }

    /// <summary>Kind of declaration that it names; null when it names none.</summary>
    public string? Names { get; init; }

    /// <summary>What the name of a file beside the declaration ends with, such as <c>.svg</c>; empty when it names no file.</summary>
    public IReadOnlyList<string> Endings { get; init; } = [];

    /// <summary>The bounds when people write it as a plain number too; null when they do not.</summary>
    public NumberField? AsNumber { get; init; }
}

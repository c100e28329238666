namespace Chandlery.Yaml.Shapes;

/// <summary>A list of texts.</summary>
/// <param name="Key">Its name in the file.</param>
/// <param name="About">What it means.</param>
public sealed record TextsField(string Key, string About) : Field(Key, About)
{
    /// <summary>What each text must look like, a regular expression; null for anything.</summary>
    public string? Pattern { get; init; }

    /// <summary>Kind of declaration that each text names; null when they name none.</summary>
    public string? Names { get; init; }

    /// <summary>What the names of files beside the declaration end with, such as <c>.jpg</c>; empty when they name no files.</summary>
    public IReadOnlyList<string> Endings { get; init; } = [];

    /// <summary>True when an empty list says nothing.</summary>
    public bool NotEmpty { get; init; }
}

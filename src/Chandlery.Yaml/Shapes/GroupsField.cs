namespace Chandlery.Yaml.Shapes;

/// <summary>A list of groups.</summary>
/// <param name="Key">Its name in the file.</param>
/// <param name="About">What it means.</param>
/// <param name="Item">What stands in each.</param>
public sealed record GroupsField(string Key, string About, Shape Item) : Field(Key, About)
{
    /// <summary>True when an empty list says nothing.</summary>
    public bool NotEmpty { get; init; }
}

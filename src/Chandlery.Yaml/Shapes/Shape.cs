namespace Chandlery.Yaml.Shapes;

/// <summary>What stands in a map.</summary>
/// <param name="Name">Name by which others refer to it.</param>
/// <param name="About">What it is.</param>
/// <param name="Fields">Its fields, in the order in which people read them.</param>
public sealed record Shape(string Name, string About, IReadOnlyList<Field> Fields)
{
    /// <summary>Ways to fill it in, of which exactly one holds; empty when there is one way only.</summary>
    public IReadOnlyList<Variant> Variants { get; init; } = [];

    /// <summary>Fields of which one at least is needed; empty for none.</summary>
    public IReadOnlyList<string> OneNeeded { get; init; } = [];

    /// <summary>A list without whose items none of <see cref="OneNeeded"/> is needed; null for none.</summary>
    public string? UnlessEmpty { get; init; }

    /// <summary>Fields that exclude each other; empty for none.</summary>
    public IReadOnlyList<string> NotTogether { get; init; } = [];
}

namespace Chandlery.Yaml.Shapes;

/// <summary>One of several ways in which a group can be filled in.</summary>
/// <param name="Needed">Fields that it needs.</param>
/// <param name="Without">Fields that it does not have.</param>
public sealed record Variant(IReadOnlyList<string> Needed, IReadOnlyList<string> Without)
{
    /// <summary>A field by whose value the way is chosen; null for none.</summary>
    public string? ChosenBy { get; init; }

    /// <summary>Values of that field.</summary>
    public IReadOnlyList<string> Values { get; init; } = [];

    /// <summary>True when leaving that field out chooses this way.</summary>
    public bool IsDefault { get; init; }

    /// <summary>Ways of which each has exactly one of these sets of fields.</summary>
    public static IReadOnlyList<Variant> OneOf(params string[][] sets) =>
        [.. sets.Select(own => new Variant(own, [.. sets.SelectMany(s => s).Except(own)]))];
}

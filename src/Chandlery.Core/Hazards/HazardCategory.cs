namespace Chandlery.Core.Hazards;

/// <summary>A hazard class with category, as GHS and CLP abbreviate it.</summary>
/// <param name="Index">Position in the vocabulary; lets rules look hazards up without comparing text.</param>
/// <param name="ClassCode">Abbreviated class, such as <c>Skin Sens.</c></param>
/// <param name="Category">Category, such as <c>1B</c>; empty for a class without categories.</param>
/// <param name="Variant">Route or effect where one category has several, such as <c>oral</c>; empty otherwise.</param>
/// <param name="Statement">Hazard statement code of the category.</param>
/// <param name="Group">The family in which only the worst result counts, such as <c>skin damage</c>.</param>
/// <param name="Severity">Rank within the group; 0 is the worst.</param>
/// <param name="Plain">What the class means, in a sentence for a reader who is no chemist.</param>
/// <param name="MultipliedBy">The M-factor that a substance of this category may have.</param>
/// <param name="NamesOrgans">True where the statement may name the organs that are harmed.</param>
/// <param name="Area">Physical, health or environment.</param>
public sealed record HazardCategory(
    int Index,
    string ClassCode,
    string Category,
    string Variant,
    StatementCode Statement,
    string Group,
    int Severity,
    string Plain,
    MFactorKind MultipliedBy,
    bool NamesOrgans,
    HazardArea Area
)
{
    /// <summary>Class and category, such as <c>Skin Sens. 1B</c>; with the route or effect where there are several.</summary>
    public string Code { get; } =
        (Category.Length == 0 ? ClassCode : ClassCode + " " + Category) + (Variant.Length == 0 ? "" : " (" + Variant + ")");

    /// <inheritdoc/>
    public override string ToString() => Code;

    /// <inheritdoc/>
    public bool Equals(HazardCategory? other) => other is not null && Index == other.Index && Code == other.Code;

    /// <inheritdoc/>
    public override int GetHashCode() => Index;
}

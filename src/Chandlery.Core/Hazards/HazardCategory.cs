namespace Chandlery.Core.Hazards;

/// <summary>A hazard class with category, as GHS and CLP abbreviate it.</summary>
public sealed record HazardCategory
{
    /// <summary>Position in the vocabulary; lets rules look hazards up without comparing text.</summary>
    public required int Index { get; init; }

    /// <summary>Abbreviated class, such as <c>Skin Sens.</c></summary>
    public required string ClassCode { get; init; }

    /// <summary>Category, such as <c>1B</c>; empty for a class without categories.</summary>
    public required string Category { get; init; }

    /// <summary>Route or effect where one category has several, such as <c>oral</c>; empty otherwise.</summary>
    public required string Variant { get; init; }

    /// <summary>Hazard statement code of the category.</summary>
    public required StatementCode Statement { get; init; }

    /// <summary>The family in which only the worst result counts, such as <c>skin damage</c>.</summary>
    public required string Group { get; init; }

    /// <summary>Rank within the group; 0 is the worst.</summary>
    public required int Severity { get; init; }

    /// <summary>What the class means, in a sentence for a reader who is no chemist.</summary>
    public required string Plain { get; init; }

    /// <summary>The M-factor that a substance of this category may have.</summary>
    public required MFactorKind MultipliedBy { get; init; }

    /// <summary>True where the statement may name the organs that are harmed.</summary>
    public required bool NamesOrgans { get; init; }

    /// <summary>Physical, health or environment.</summary>
    public required HazardArea Area { get; init; }

    /// <summary>Class and category, such as <c>Skin Sens. 1B</c>; with the route or effect where there are several.</summary>
    public string Code =>
        field ??= (Category.Length == 0 ? ClassCode : ClassCode + " " + Category) + (Variant.Length == 0 ? "" : " (" + Variant + ")");

    /// <inheritdoc/>
    public override string ToString() => Code;

    /// <inheritdoc/>
    public bool Equals(HazardCategory? other) => other is not null && Index == other.Index && Code == other.Code;

    /// <inheritdoc/>
    public override int GetHashCode() => Index;
}

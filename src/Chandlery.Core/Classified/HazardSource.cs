using Chandlery.Core.Hazards;

namespace Chandlery.Core.Classified;

/// <summary>Somebody who speaks of a substance's hazards: a supplier's sheet, or an entry of the table of harmonised classes.</summary>
/// <param name="Claims">The classes that it gives.</param>
/// <param name="Limits">The specific concentration limits that it gives.</param>
/// <param name="AcuteM">Its M-factor for acute aquatic toxicity; null for none.</param>
/// <param name="ChronicM">Its M-factor for chronic aquatic toxicity; null for none.</param>
/// <param name="Name">What it is called on papers.</param>
/// <param name="Standing">What its word weighs.</param>
internal sealed record HazardSource(
    IReadOnlyList<HazardClaim> Claims,
    IReadOnlyList<SpecificLimit> Limits,
    double? AcuteM,
    double? ChronicM,
    string Name,
    Standing Standing
)
{
    /// <summary>True for a supplier's sheet, false for an entry.</summary>
    public bool IsSheet => Standing == Standing.Supplier;

    /// <summary>True where it gives a class of the group.</summary>
    public bool Speaks(string group) => ClassesOf(group).Any();

    /// <summary>True where it gives a specific limit for a class of the group.</summary>
    public bool GivesLimits(string group) => Limits.Any(l => l.Category.Group == group);

    /// <summary>Its classes of a group.</summary>
    public IEnumerable<HazardClaim> ClassesOf(string group) => Claims.Where(c => c.Category.Group == group);

    /// <summary>Its lowest limit for a category, percent; null for none.</summary>
    public double? LimitOf(HazardCategory category) => Limits.Where(l => l.Category == category).Select(l => (double?)l.From.Value).Min();
}

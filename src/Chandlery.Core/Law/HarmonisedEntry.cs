using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>An entry of the table of harmonised classes (CLP Annex VI, Part 3, Table 3) as one act left it.</summary>
public sealed record HarmonisedEntry
{
    /// <summary>Index number; empty for a row of the user's that has none.</summary>
    public required string IndexNumber { get; init; }

    /// <summary>The substances that it covers, in the table's order.</summary>
    public required IReadOnlyList<EntryMember> Members { get; init; }

    /// <summary>Its classes; none where the act took the entry out.</summary>
    public required IReadOnlyList<HarmonisedClass> Classes { get; init; }

    /// <summary>Specific concentration limits.</summary>
    public required IReadOnlyList<SpecificLimit> Limits { get; init; }

    /// <summary>M-factor of the acute aquatic class.</summary>
    public required double? AcuteM { get; init; }

    /// <summary>M-factor of the chronic aquatic class.</summary>
    public required double? ChronicM { get; init; }

    /// <summary>Acute toxicity estimates.</summary>
    public required IReadOnlyList<ToxicityEstimate> Toxicity { get; init; }

    /// <summary>Limits and figures as the table prints them.</summary>
    public required IReadOnlyList<string> Figures { get; init; }

    /// <summary>Limits of classes that rules compute, in a form that no rule reads; they must be told.</summary>
    public required IReadOnlyList<string> Unread { get; init; }

    /// <summary>The notes that the table refers to, such as <c>C</c> or <c>N</c>.</summary>
    public required IReadOnlyList<string> Notes { get; init; }

    /// <summary>What the table prints in brackets after a name: the form of the substance that the entry speaks of.</summary>
    public IReadOnlyList<string> Conditions { get; init; } = [];

    /// <summary>The act that says so.</summary>
    public required LegalAct Act { get; init; }

    /// <summary>The day from which it applies.</summary>
    public required DateOnly From { get; init; }

    /// <summary>The classes that the rules use.</summary>
    public IEnumerable<HazardClaim> Claims => Classes.Select(c => c.Claim).OfType<HazardClaim>();

    /// <summary>True where the entry stands in the table; false where the act took it out.</summary>
    public bool Stands => Classes.Count > 0;

    /// <summary>The member that a substance is, or null.</summary>
    public EntryMember? Member(SubstanceIdentity identity) =>
        Members.FirstOrDefault(m => m.Cas is not null && m.Cas == identity.Cas?.Text)
        ?? Members.FirstOrDefault(m => m.Ec is not null && m.Ec == identity.Ec?.Text);
}

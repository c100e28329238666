using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>An entry of the list of substances: harmonised, or known to have none.</summary>
public sealed record SubstanceEntry
{
    /// <summary>Names, the preferred one first.</summary>
    public required IReadOnlyList<string> Names { get; init; }

    /// <summary>All CAS numbers of the entry.</summary>
    public required IReadOnlyList<string> CasNumbers { get; init; }

    /// <summary>EC numbers of the entry.</summary>
    public required IReadOnlyList<string> EcNumbers { get; init; }

    /// <summary>Annex VI index number; null when not known or none.</summary>
    public required string? IndexNumber { get; init; }

    /// <summary>Harmonised classes; null when the substance has no harmonised entry.</summary>
    public required IReadOnlyList<HazardClaim>? Claims { get; init; }

    /// <summary>Harmonised specific limits.</summary>
    public required IReadOnlyList<SpecificLimit> Limits { get; init; }

    /// <summary>Harmonised M-factor, acute.</summary>
    public required double? AcuteM { get; init; }

    /// <summary>Harmonised M-factor, chronic.</summary>
    public required double? ChronicM { get; init; }

    /// <summary>Harmonised acute toxicity estimates.</summary>
    public required IReadOnlyList<ToxicityEstimate> Toxicity { get; init; }

    /// <summary>When the entry holds.</summary>
    public required InForce InForce { get; init; }

    /// <summary>The act that brought it.</summary>
    public required string Act { get; init; }

    /// <summary>How the row was checked.</summary>
    public required string Confidence { get; init; }

    /// <summary>Kind of substance whose irritation may not add up, such as aldehyde; null for others.</summary>
    public required string? NonAdditiveKind { get; init; }
}

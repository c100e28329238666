using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>An entry of the list of substances: harmonised, or known to have none.</summary>
/// <param name="Names">Names, the preferred one first.</param>
/// <param name="CasNumbers">All CAS numbers of the entry.</param>
/// <param name="EcNumbers">EC numbers of the entry.</param>
/// <param name="IndexNumber">Annex VI index number; null when not known or none.</param>
/// <param name="Claims">Harmonised classes; null when the substance has no harmonised entry.</param>
/// <param name="Limits">Harmonised specific limits.</param>
/// <param name="AcuteM">Harmonised M-factor, acute.</param>
/// <param name="ChronicM">Harmonised M-factor, chronic.</param>
/// <param name="Toxicity">Harmonised acute toxicity estimates.</param>
/// <param name="InForce">When the entry holds.</param>
/// <param name="Act">The act that brought it.</param>
/// <param name="Confidence">How the row was checked.</param>
/// <param name="NonAdditiveKind">Kind of substance whose irritation may not add up, such as aldehyde; null for others.</param>
public sealed record SubstanceEntry(
    IReadOnlyList<string> Names,
    IReadOnlyList<string> CasNumbers,
    IReadOnlyList<string> EcNumbers,
    string? IndexNumber,
    IReadOnlyList<HazardClaim>? Claims,
    IReadOnlyList<SpecificLimit> Limits,
    double? AcuteM,
    double? ChronicM,
    IReadOnlyList<ToxicityEstimate> Toxicity,
    InForce InForce,
    string Act,
    string Confidence,
    string? NonAdditiveKind
);

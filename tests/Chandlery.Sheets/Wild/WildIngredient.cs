namespace Chandlery.Sheets.Wild;

/// <summary>What a random sheet says of an ingredient; null where it does not say it.</summary>
/// <param name="Name">Name.</param>
/// <param name="Cas">CAS number.</param>
/// <param name="Ec">EC number.</param>
/// <param name="Share">Share, percent.</param>
/// <param name="Classes">Classes; empty for "not classified".</param>
/// <param name="Limits">Specific limits.</param>
/// <param name="AcuteM">M-factor, acute.</param>
/// <param name="ChronicM">M-factor, chronic.</param>
/// <param name="OralMgPerKg">Estimate of acute oral toxicity.</param>
public sealed record WildIngredient(
    string Name,
    string Cas,
    string? Ec,
    WildShare Share,
    IReadOnlyList<string>? Classes,
    IReadOnlyList<string> Limits,
    double? AcuteM,
    double? ChronicM,
    double? OralMgPerKg
);

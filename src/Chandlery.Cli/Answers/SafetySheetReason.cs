namespace Chandlery.Cli.Answers;

/// <summary>Why a safety data sheet is due or not, for programs.</summary>
/// <param name="Says">The reason.</param>
/// <param name="Clause">Where it stands; null for none.</param>
internal sealed record SafetySheetReason(string Says, string? Clause);

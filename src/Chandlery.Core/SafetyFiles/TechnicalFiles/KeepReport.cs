namespace Chandlery.Core.SafetyFiles.TechnicalFiles;

/// <summary>How long a technical file is kept for a place, for programs.</summary>
/// <param name="Place">Code of the place.</param>
/// <param name="Years">Years after the last one was placed on the market; null where no rule is known.</param>
/// <param name="Until">The day by the dispatches so far; null where none is declared or no rule is known.</param>
/// <param name="Clause">Where the rule stands; null where none is known.</param>
public sealed record KeepReport(string Place, int? Years, string? Until, string? Clause);

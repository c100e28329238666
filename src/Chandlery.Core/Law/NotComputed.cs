using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>Hazards that are not computed, and why.</summary>
/// <param name="Hazards">The hazards.</param>
/// <param name="Why">The reason, for the reader of an assessment.</param>
/// <param name="Clause">Where the law says how to find them.</param>
public sealed record NotComputed(IReadOnlyList<HazardCategory> Hazards, string Why, Citation Clause);

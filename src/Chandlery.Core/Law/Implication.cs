using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>A result in this group that follows from a result in another one.</summary>
/// <param name="Results">The other results.</param>
/// <param name="Gives">What follows.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record Implication(IReadOnlyList<HazardCategory> Results, HazardCategory Gives, Citation Clause);

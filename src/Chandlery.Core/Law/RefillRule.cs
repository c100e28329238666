using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>What may not be refilled in a shop, and what such a sale asks of the others.</summary>
/// <param name="From">Since when.</param>
/// <param name="Hazards">Classes that may not be sold so at all.</param>
/// <param name="Asks">What it asks of the shop for all others.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record RefillRule(DateOnly From, IReadOnlyList<HazardCategory> Hazards, string Asks, Citation Clause);

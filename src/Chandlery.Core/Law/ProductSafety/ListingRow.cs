using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law.ProductSafety;

/// <summary>A part that the law wants in a listing.</summary>
/// <param name="Part">The part.</param>
/// <param name="For">Where.</param>
/// <param name="InForce">When.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record ListingRow(ListingPart Part, IReadOnlyList<ListingUse> For, InForce InForce, Citation Clause);

using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law.ProductSafety;

/// <summary>What follows from a claim on label, shop or advertisement.</summary>
/// <param name="Words">Words of which one in a claim is enough, in lower case.</param>
/// <param name="InForce">When it holds.</param>
/// <param name="Stops">Whether the candle must not be sold with it.</param>
/// <param name="Says">What follows.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record ClaimRow(IReadOnlyList<string> Words, InForce InForce, bool Stops, string Says, Citation Clause);

using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law.ProductSafety;

/// <summary>A mark on packaging, or a register that its grams are told to.</summary>
/// <param name="SoldIn">Places of sale for which it holds; empty for all under the law.</param>
/// <param name="InForce">When it holds.</param>
/// <param name="Says">What is due.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record MarkRow(IReadOnlyList<string> SoldIn, InForce InForce, string Says, Citation Clause);

namespace Chandlery.Core.Law.ProductSafety;

/// <summary>What offers at a distance and advertisements must show.</summary>
/// <param name="Rows">The parts.</param>
public sealed record ListingRules(IReadOnlyList<ListingRow> Rows);

namespace Chandlery.Core.Law.ProductSafety;

/// <summary>Duties of the maker beside the hazard label.</summary>
/// <param name="Rows">The rows.</param>
public sealed record DutyRules(IReadOnlyList<DutyRow> Rows);

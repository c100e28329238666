namespace Chandlery.Core.Law.ProductSafety;

/// <summary>Within which time incidents are reported.</summary>
/// <param name="Clocks">The rows.</param>
public sealed record IncidentRules(IReadOnlyList<ClockRow> Clocks);

namespace Chandlery.Core.Asked.Substances;

/// <summary>M-factors; null for none.</summary>
/// <param name="Acute">Of the acute class.</param>
/// <param name="Chronic">Of the chronic class.</param>
public sealed record FactorAnswer(double? Acute, double? Chronic);

namespace Chandlery.Core.Law.ProductSafety;

/// <summary>What a technical file holds, whatever the place.</summary>
/// <param name="Risks">Risks that are looked at.</param>
/// <param name="Standards">Standards that are named.</param>
/// <param name="FewestSamples">How many samples a burn test should have.</param>
public sealed record FileRules(IReadOnlyList<RiskRow> Risks, IReadOnlyList<StandardRow> Standards, int FewestSamples);

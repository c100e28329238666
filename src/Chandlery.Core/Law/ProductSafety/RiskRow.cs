namespace Chandlery.Core.Law.ProductSafety;

/// <summary>A risk that the technical file looks at.</summary>
/// <param name="Id">Short name.</param>
/// <param name="When">For which candles.</param>
/// <param name="Risk">What may happen.</param>
/// <param name="Likelihood">How likely it is without measures, from 1 (rare) to 5.</param>
/// <param name="Severity">How grave it would be, from 1 (slight) to 5.</param>
/// <param name="Measure">What is done about it.</param>
/// <param name="Proof">What proves that.</param>
public sealed record RiskRow(string Id, RiskWhen When, string Risk, int Likelihood, int Severity, string Measure, RiskProof Proof)
{
    /// <summary>The sorts of product that it is looked at for; those that burn where none is named.</summary>
    public IReadOnlyList<ProductSort> Of { get; init; } = [ProductSort.Burning];
}

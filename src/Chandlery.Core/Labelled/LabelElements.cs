namespace Chandlery.Core.Labelled;

/// <summary>What the law puts on the label of a classified or allergen-bearing candle.</summary>
/// <param name="Pictograms">GHS codes, in their order.</param>
/// <param name="SignalWord">Danger, Warning, or null.</param>
/// <param name="Hazard">Hazard statements.</param>
/// <param name="Supplemental">Supplemental statements (EUH...).</param>
/// <param name="Precautionary">Precautionary statements.</param>
/// <param name="Named">Substances named under "contains", or in the supplemental statement.</param>
/// <param name="LeftOff">What was considered and left off, with the reason.</param>
public sealed record LabelElements(
    IReadOnlyList<LabelChoice> Pictograms,
    LabelChoice? SignalWord,
    IReadOnlyList<LabelChoice> Hazard,
    IReadOnlyList<LabelChoice> Supplemental,
    IReadOnlyList<LabelChoice> Precautionary,
    IReadOnlyList<NamedSubstance> Named,
    IReadOnlyList<LabelChoice> LeftOff
)
{
    /// <summary>No elements at all: for a consumer product that carries no such label.</summary>
    public static LabelElements None { get; } = new([], null, [], [], [], [], []);

    /// <summary>True when the candle is classified as hazardous.</summary>
    public bool IsHazardous => Hazard.Count > 0 || Supplemental.Any(s => s.Code is not ("EUH208" or "EUH210" or "GHS-ELICITATION"));
}

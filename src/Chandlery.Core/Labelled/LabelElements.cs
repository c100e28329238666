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
    IReadOnlyList<PictogramChoice> Pictograms,
    SignalWordChoice? SignalWord,
    IReadOnlyList<StatementChoice> Hazard,
    IReadOnlyList<StatementChoice> Supplemental,
    IReadOnlyList<StatementChoice> Precautionary,
    IReadOnlyList<NamedSubstance> Named,
    IReadOnlyList<LeftOffChoice> LeftOff
)
{
    /// <summary>No elements at all: for a consumer product that carries no such label.</summary>
    public static LabelElements None { get; } = new([], null, [], [], [], [], []);

    /// <summary>
    /// Names to print after "contains": all of them, or, where a supplemental statement names the sensitisers, those behind a class.
    /// </summary>
    public IEnumerable<NamedSubstance> Contained =>
        Hazard.Count + Supplemental.Count == 0 ? [] : Named.Where(n => n.IsBehindClass || !Supplemental.Any(s => s.NamesSubstances));

    /// <summary>Names to print in the supplemental statement that names sensitisers.</summary>
    public IEnumerable<NamedSubstance> Eliciting => Named.Where(n => n.IsSensitiser);

    /// <summary>Everything on the label that has a code or is a signal word, in the order of a label.</summary>
    public IEnumerable<LabelChoice> All =>
        Pictograms.Concat<LabelChoice>(SignalWord is { } word ? [word] : []).Concat(Hazard).Concat(Supplemental).Concat(Precautionary);
}

namespace Chandlery.Cli.Answers;

/// <summary>The labels that a vessel can carry, for programs.</summary>
/// <param name="Candle">Name of the declaration.</param>
/// <param name="Edition">The edition of the law.</param>
/// <param name="Vessel">The vessel's trade name.</param>
/// <param name="Labels">The labels, the best first.</param>
internal sealed record ArrangementAnswer(string Candle, string Edition, string Vessel, IReadOnlyList<ArrangedLabel> Labels);

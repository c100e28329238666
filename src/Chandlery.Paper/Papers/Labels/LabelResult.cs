using Chandlery.Core.Labelled;
using Chandlery.Core.Law;

namespace Chandlery.Paper.Papers.Labels;

/// <summary>The label of a candle: either one that fits, or what is missing.</summary>
/// <param name="Fitted">The label; null when it does not fit.</param>
/// <param name="Misfit">What is missing; null when it fits.</param>
/// <param name="Format">How the law wants labels to look on the day of the assessment.</param>
/// <param name="LeftOff">Statements left off because the package is small and the text would not fit with them.</param>
public sealed record LabelResult(FittedLabel? Fitted, Misfit? Misfit, LabelFormat Format, IReadOnlyList<StatementChoice> LeftOff);

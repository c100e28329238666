using Chandlery.Paper.Shapes;

namespace Chandlery.Paper.Papers.Labels;

/// <summary>How one arrangement fares.</summary>
/// <param name="Shape">The arrangement.</param>
/// <param name="HoldsLegalSize">Whether the law's label size fits inside.</param>
/// <param name="Fitted">The label; null when the text does not fit.</param>
/// <param name="Missing">What is missing when it does not.</param>
public sealed record ArrangementResult(LabelShape Shape, bool HoldsLegalSize, FittedLabel? Fitted, Misfit? Missing);

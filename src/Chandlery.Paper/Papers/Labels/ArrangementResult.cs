namespace Chandlery.Paper.Papers.Labels;

/// <summary>How one arrangement fares.</summary>
/// <param name="Attempt">What came of setting the text in it.</param>
/// <param name="HoldsLegalSize">Whether the law's label size fits inside.</param>
public sealed record ArrangementResult(LabelAttempt Attempt, bool HoldsLegalSize);

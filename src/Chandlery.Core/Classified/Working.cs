using Chandlery.Core.Hazards;

namespace Chandlery.Core.Classified;

/// <summary>How a result was found.</summary>
/// <param name="Formula">What was computed, in words and signs.</param>
/// <param name="Lines">The inputs.</param>
/// <param name="Value">What came out.</param>
/// <param name="Threshold">What it was compared with.</param>
/// <param name="Unit">Unit of both.</param>
/// <param name="Clause">Where the rule stands.</param>
/// <param name="Sentence">The same for a reader who is no chemist.</param>
/// <param name="Confidence">How the rule's row was checked.</param>
public sealed record Working(
    string Formula,
    IReadOnlyList<WorkingLine> Lines,
    double Value,
    double Threshold,
    string Unit,
    Citation Clause,
    string Sentence,
    string Confidence
);

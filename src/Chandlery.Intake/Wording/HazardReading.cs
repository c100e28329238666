using Chandlery.Core.Hazards;

namespace Chandlery.Intake.Wording;

/// <summary>What a table's cell says about hazards.</summary>
/// <param name="Classes">Class texts as declarations write them; empty for "not classified"; null when nothing is said.</param>
/// <param name="Limits">Specific limits as declarations write them.</param>
/// <param name="M">M-factors; null when none is given.</param>
/// <param name="Toxicity">Acute toxicity estimates.</param>
/// <param name="Doubts">What was not understood or had to be filled in.</param>
internal sealed record HazardReading(
    IReadOnlyList<string>? Classes,
    IReadOnlyList<string> Limits,
    MFactors? M,
    IReadOnlyList<ToxicityEstimate> Toxicity,
    IReadOnlyList<string> Doubts
);

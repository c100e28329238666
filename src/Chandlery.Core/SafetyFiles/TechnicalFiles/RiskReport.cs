namespace Chandlery.Core.SafetyFiles.TechnicalFiles;

/// <summary>A risk of a technical file, for programs.</summary>
/// <param name="Risk">Its short name.</param>
/// <param name="Says">What may happen.</param>
/// <param name="Likelihood">How likely it is without measures, from 1 (rare) to 5.</param>
/// <param name="Severity">How grave it would be, from 1 (slight) to 5.</param>
/// <param name="Measure">What is done about it.</param>
/// <param name="Proof">Where the proof stands.</param>
/// <param name="IsMet">Whether the proof holds; null where there is none yet.</param>
/// <param name="IsInQuestion">Whether an open incident puts the proof in question.</param>
public sealed record RiskReport(
    string Risk,
    string Says,
    int Likelihood,
    int Severity,
    string Measure,
    string Proof,
    bool? IsMet,
    bool IsInQuestion
)
{
    /// <summary>The report of a risk.</summary>
    public static RiskReport Of(RiskLine line) =>
        new(
            line.Row.Id,
            line.Row.Risk,
            line.Row.Likelihood,
            line.Row.Severity,
            line.Row.Measure,
            line.Proof,
            line.Holds,
            line.IsInQuestion
        );
}

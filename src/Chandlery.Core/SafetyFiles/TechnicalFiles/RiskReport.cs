namespace Chandlery.Core.SafetyFiles.TechnicalFiles;

/// <summary>A risk of a technical file, for programs.</summary>
public sealed record RiskReport
{
    /// <summary>Its short name.</summary>
    public required string Risk { get; init; }

    /// <summary>What may happen.</summary>
    public required string Says { get; init; }

    /// <summary>How likely it is without measures, from 1 (rare) to 5.</summary>
    public required int Likelihood { get; init; }

    /// <summary>How grave it would be, from 1 (slight) to 5.</summary>
    public required int Severity { get; init; }

    /// <summary>What is done about it.</summary>
    public required string Measure { get; init; }

    /// <summary>Where the proof stands.</summary>
    public required string Proof { get; init; }

    /// <summary>Whether the proof holds; null where there is none yet.</summary>
    public required bool? IsMet { get; init; }

    /// <summary>Whether an open incident puts the proof in question.</summary>
    public required bool IsInQuestion { get; init; }

    /// <summary>The report of a risk.</summary>
    public static RiskReport Of(RiskLine line) =>
        new()
        {
            Risk = line.Row.Id,
            Says = line.Row.Risk,
            Likelihood = line.Row.Likelihood,
            Severity = line.Row.Severity,
            Measure = line.Row.Measure,
            Proof = line.Proof,
            IsMet = line.Holds,
            IsInQuestion = line.IsInQuestion,
        };
}

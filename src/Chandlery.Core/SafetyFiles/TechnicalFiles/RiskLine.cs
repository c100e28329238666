using Chandlery.Core.Law.ProductSafety;

namespace Chandlery.Core.SafetyFiles.TechnicalFiles;

/// <summary>A risk of a candle with the proof that it is met.</summary>
/// <param name="Row">The risk.</param>
/// <param name="Proof">Where the proof stands.</param>
/// <param name="Holds">Whether it holds; null where there is none yet.</param>
public sealed record RiskLine(RiskRow Row, string Proof, bool? Holds)
{
    /// <summary>Whether an open incident puts the proof in question, so that it must be reviewed; <see cref="Holds"/> is null then.</summary>
    public bool IsInQuestion { get; init; }
}

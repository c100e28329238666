using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>Within which time labels must follow a new classification.</summary>
/// <param name="InForce">When these figures hold.</param>
/// <param name="GraverMonths">Where a hazard is new or graver, months after the new evaluation.</param>
/// <param name="OtherMonths">For other changes of the label, months.</param>
/// <param name="Clause">Where it stands.</param>
/// <param name="Confidence">How it was checked.</param>
/// <param name="Stricter">What is held of labels of the class before where an act changes the class.</param>
public sealed record RelabellingRules(
    InForce InForce,
    int GraverMonths,
    int OtherMonths,
    Citation Clause,
    string Confidence,
    string Stricter
)
{
    /// <summary>The last day on which labels of the old classification may still be supplied.</summary>
    /// <param name="evaluated">The day on which the new evaluation was had.</param>
    /// <param name="isGraver">True when a hazard is new or graver.</param>
    public DateOnly OldLabelsUntil(DateOnly evaluated, bool isGraver) => evaluated.AddMonths(isGraver ? GraverMonths : OtherMonths);
}

using Chandlery.Core.Hazards;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Drafts;

/// <summary>An ingredient as read. Texts stay as printed where they could not be understood, so that the declaration's own reader refuses them.</summary>
/// <param name="Name">Name.</param>
/// <param name="Cas">CAS number, also when its check digit fails.</param>
/// <param name="Ec">EC number, also when its check digit fails.</param>
/// <param name="Share">Share in the declaration's form; null when the sheet's text is no share.</param>
/// <param name="Classes">Class texts; empty for "not classified"; null when the sheet says nothing.</param>
/// <param name="Limits">Specific concentration limits.</param>
/// <param name="M">M-factors.</param>
/// <param name="Toxicity">Acute toxicity estimates.</param>
/// <param name="Doubts">What speaks against the row as a whole.</param>
public sealed record DraftIngredient(
    Found<string> Name,
    Found<string>? Cas,
    Found<string>? Ec,
    Found<string>? Share,
    Found<IReadOnlyList<string>>? Classes,
    Found<IReadOnlyList<string>>? Limits,
    Found<MFactors>? M,
    Found<IReadOnlyList<ToxicityEstimate>>? Toxicity,
    IReadOnlyList<string> Doubts
);

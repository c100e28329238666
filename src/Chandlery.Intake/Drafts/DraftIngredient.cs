using Chandlery.Core.Hazards;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Drafts;

/// <summary>An ingredient as read. Texts stay as printed where they could not be understood, so that the declaration's own reader refuses them.</summary>
public sealed record DraftIngredient
{
    /// <summary>Name.</summary>
    public required Found<string> Name { get; init; }

    /// <summary>CAS number, also when its check digit fails.</summary>
    public required Found<string>? Cas { get; init; }

    /// <summary>EC number, also when its check digit fails.</summary>
    public required Found<string>? Ec { get; init; }

    /// <summary>Share in the declaration's form; null when the sheet's text is no share.</summary>
    public required Found<string>? Share { get; init; }

    /// <summary>Class texts; empty for "not classified"; null when the sheet says nothing.</summary>
    public required Found<IReadOnlyList<string>>? Classes { get; init; }

    /// <summary>Specific concentration limits.</summary>
    public required Found<IReadOnlyList<string>>? Limits { get; init; }

    /// <summary>M-factors.</summary>
    public required Found<MFactors>? M { get; init; }

    /// <summary>Acute toxicity estimates.</summary>
    public required Found<IReadOnlyList<ToxicityEstimate>>? Toxicity { get; init; }

    /// <summary>What speaks against the row as a whole.</summary>
    public required IReadOnlyList<string> Doubts { get; init; }
}

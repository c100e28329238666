using Chandlery.Paper.Papers.Labels;

namespace Chandlery.Cli.Answers;

/// <summary>A label tried on a vessel, for programs.</summary>
/// <param name="Label">Its form and size.</param>
/// <param name="Where">Where it would stand.</param>
/// <param name="HoldsLegalSize">Whether it is as large as the law wants.</param>
/// <param name="LettersMm">Height of its letters, mm; null when the text does not fit.</param>
/// <param name="MissingHeightMm">Height that the text lacks, mm; null when it fits.</param>
/// <param name="Notes">What to mind.</param>
internal sealed record ArrangedLabel(
    string Label,
    string Where,
    bool HoldsLegalSize,
    double? LettersMm,
    double? MissingHeightMm,
    IReadOnlyList<string> Notes
)
{
    public static ArrangedLabel Of(ArrangementResult result) =>
        new(
            result.Attempt.Shape.Request.ToString(),
            result.Attempt.Shape.Where,
            result.HoldsLegalSize,
            result.Attempt.Fitted?.XHeight.Value,
            (result.Attempt as Misfit)?.MissingHeight.Value,
            [.. result.Attempt.Fitted?.Notes ?? []]
        );
}

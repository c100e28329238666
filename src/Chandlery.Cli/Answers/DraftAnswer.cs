using Chandlery.Intake.Drafts;

namespace Chandlery.Cli.Answers;

/// <summary>What came of drafting an oil, for programs.</summary>
/// <param name="File">The declaration that was written; - for the standard output.</param>
/// <param name="Pages">Pictures of pages that were written.</param>
/// <param name="Ingredients">How many lines were drafted.</param>
/// <param name="ToReview">Places that are doubtful.</param>
/// <param name="Contradictions">What does not agree with the law's table or with itself.</param>
internal sealed record DraftAnswer(
    string File,
    IReadOnlyList<string> Pages,
    int Ingredients,
    IReadOnlyList<ReviewPoint> ToReview,
    IReadOnlyList<string> Contradictions
);

using Chandlery.Paper.Papers;
using Chandlery.Yaml;

namespace Chandlery.Tests.Paper;

/// <summary>A paper of the tests' own, which nothing in the program knows.</summary>
/// <param name="due">Whether something is amiss without it; null for a paper that can be made.</param>
internal sealed class NotePaper(bool? due = null) : PaperKind("thank-you", "Thank-you note")
{
    public override bool IsRegistered => true;

    protected override PaperOutcome Make(PaperRequest request, Problems problems) =>
        due is { } isDue
            ? new MissingPaper("nobody has thanked yet.", isDue, [])
            : Outcome(
                ManyPages.FromMarkup(
                    $"<paper title=\"Note\" width=\"74\" height=\"105\"><p>Thank you for {request.Assessment.Candle.Name}</p></paper>",
                    "note",
                    request.Shop,
                    problems
                ),
                problems,
                ["Sign it."]
            );
}

using Chandlery.Core.Assessed;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.Labels;

namespace Chandlery.Paper.Proofs;

/// <summary>Papers as they may leave the program: a label that does not hold what the law asks, measured in its own PDF, is no label.</summary>
public static class MeasuredPaper
{
    /// <summary>The paper as it was made; a label that fails is missing, with each dimension or text that fails and its clause.</summary>
    public static PaperOutcome Of(Assessment a, PaperOutcome outcome)
    {
        if (outcome is not MadeLabel label)
        {
            return outcome;
        }

        List<Inspection> failed = [.. LabelInspector.Inspect(label, a).Where(i => !i.Holds)];
        return failed.Count == 0
            ? outcome
            : new MissingPaper(
                $"measured in its own PDF it does not hold: {string.Join("; ", failed.Select(f => $"{f.What} is {f.Measured}, and must be {f.Required} ({f.Clause})"))}.",
                IsDue: true,
                []
            );
    }
}

using Chandlery.Core.Hazards;
using Chandlery.Core.Judged;
using Chandlery.Core.Law;

namespace Chandlery.Core.Assessed;

/// <summary>Which papers are not made under an edition, and that its law is known in part only.</summary>
internal static class RefusalFindings
{
    /// <summary>The findings.</summary>
    public static IEnumerable<Finding> Of(ProductKind kind, Verdict verdict)
    {
        Edition edition = verdict.Law.Edition;
        List<HazardCategory> classes = [.. verdict.Classification.Classes.Select(c => c.Category)];
        foreach (Refusal refusal in edition.Refuses.Where(r => r.Holds(classes)))
        {
            yield return new Finding(
                refusal.StopsSale ? Gravity.Stop : Gravity.Look,
                $"Not made here: {string.Join(", ", refusal.Papers)}. {kind.Say(refusal.Because)}",
                refusal.Clause
            );
        }

        // What nobody knows of cannot rule out the classes for which a paper is refused.
        List<string> unknown = [.. verdict.Substances.Where(s => !s.IsKnown).Select(s => s.Name)];
        foreach (Refusal refusal in edition.Refuses.Where(r => unknown.Count > 0 && r.Hazards.Count > 0 && !r.Holds(classes)))
        {
            yield return new Finding(
                refusal.StopsSale ? Gravity.Stop : Gravity.Look,
                $"Nothing is known of {string.Join(", ", unknown)}, so it cannot be ruled out here: {kind.Say(refusal.Because)}",
                refusal.Clause
            );
        }

        foreach (string left in edition.IsKnownInPart ? edition.DoesNotCover : [])
        {
            yield return new Finding(Gravity.Look, $"Not looked at here: {kind.Say(left)}.", Citation.None);
        }
    }
}

using Chandlery.Core.Classified;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Labelled;

/// <summary>What may be left off the label of a small package (CLP Annex I, 1.5.2).</summary>
public static class SmallPackages
{
    /// <summary>The statements that may go, each with its reason; empty when the package is too large.</summary>
    public static IReadOnlyList<StatementChoice> MayLeaveOff(
        Edition edition,
        Classification classification,
        LabelElements label,
        Millilitres contents
    )
    {
        SmallPackageRules rules = edition.SmallPackages;
        if (contents.Value > rules.UpTo.Value)
        {
            return [];
        }

        var gone = new List<StatementChoice>();
        foreach (StatementChoice statement in label.Hazard)
        {
            List<ClassResult> behind = [.. Behind(edition, classification, statement.Code)];
            if (behind.Count > 0 && behind.All(c => Row(rules, c, r => r.HazardStatement) is not null))
            {
                gone.Add(Choice(statement.Code, rules, Row(rules, behind[0], r => r.HazardStatement)!));
            }
        }

        // A precaution stays as long as one class that calls for it must keep its precautions, and what a duty of its own asks for
        // goes with no class.
        foreach (StatementChoice precaution in label.Precautionary.Where(p => !IsOwed(edition, p.Code, classification)))
        {
            List<ClassResult> callers = [.. classification.Classes.Where(c => CallsFor(edition, precaution.Code, c))];
            if (callers.Count > 0 && callers.All(c => Row(rules, c, r => r.Precautionary) is not null))
            {
                gone.Add(Choice(precaution.Code, rules, Row(rules, callers[0], r => r.Precautionary)!));
            }
        }

        return gone;
    }

    private static Relief? Row(SmallPackageRules rules, ClassResult result, Func<Relief, bool> what) =>
        rules.Rows.FirstOrDefault(r => !r.NotForPublic && what(r) && r.Hazards.Contains(result.Category));

    private static bool CallsFor(Edition edition, StatementCode precaution, ClassResult result) =>
        edition.Precautions.Offers.Any(o => o.Code == precaution && o.For.Contains(result.Category.Statement));

    private static bool IsOwed(Edition edition, StatementCode precaution, Classification classification) =>
        edition.Precautions.Offers.Any(o =>
            o.Code == precaution && !o.Listed && classification.Classes.Any(c => o.For.Contains(c.Category.Statement))
        );

    // A printed statement may stand for several classes (H410 for acute and chronic).
    private static IEnumerable<ClassResult> Behind(Edition edition, Classification classification, StatementCode code) =>
        classification.Classes.Where(c =>
            c.Statement == code
            || edition.Statements.Any(s =>
                s.Use == code
                && s.All.Contains(c.Category.Statement)
                && s.All.All(a => classification.Classes.Any(x => x.Category.Statement == a))
            )
        );

    private static StatementChoice Choice(StatementCode code, SmallPackageRules rules, Relief row) =>
        new(code, $"may be left off a package of up to {rules.UpTo}", row.Clause);
}

using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Judged;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Assessed;

/// <summary>Compares the classes that a sheet gives an oil with those that its ingredients compute to.</summary>
public static class OilComparison
{
    /// <summary>Contradictions, a sentence each; physical hazards and aspiration are left out, because they are not computed.</summary>
    public static IEnumerable<string> Contradictions(Oil oil, LawInForce law)
    {
        if (oil.OwnClaims is null || oil.Ingredients.Count == 0)
        {
            yield break;
        }

        Verdict computed = Judged(oil, law);
        foreach (ClassRule rule in law.Rules)
        {
            HazardCategory? said = oil.OwnClaims.FirstOrDefault(c => c.Category.Group == rule.Group)?.Category;
            HazardCategory? found = computed.ResultOf(rule)?.Category;
            if (said is not null && found is not null && IsSame(said, found))
            {
                continue;
            }

            if (found is not null && (said is null || found.Severity < said.Severity))
            {
                yield return $"{oil.Name}: its sheet says {said?.Code ?? "nothing"} for {rule.Group}, but its ingredients compute to {found.Code}. The candle is computed from the ingredients; ask the supplier.";
            }
            else if (said is not null && (found is null || said.Severity < found.Severity))
            {
                yield return $"{oil.Name}: its sheet says {said.Code}, but its declared ingredients compute only to {found?.Code ?? "no class"} for {rule.Group}. Something may be missing from the table, or the supplier tested the oil; ask.";
            }
        }
    }

    /// <summary>
    /// What the law's table says against the sheet's lines: harmonised classes that a line lacks, a name with another substance's
    /// number, notes, drafts.
    /// </summary>
    public static IEnumerable<string> AgainstTheTable(Oil oil, LawInForce law) =>
        Judged(oil, law).Substances.SelectMany(s => s.Remarks).Distinct();

    private static Verdict Judged(Oil oil, LawInForce law)
    {
        var recipe = new Recipe(
            [new OilShare(oil, MassPercent.Whole, MassPercent.Whole)],
            [],
            [],
            MassPercent.Zero,
            MassPercent.Zero,
            MassPercent.Whole,
            MassPercent.Zero
        );
        return law.Judge(Composer.Compose(recipe));
    }

    // "1" says the same as "1A" or "1B" with less detail.
    private static bool IsSame(HazardCategory a, HazardCategory b) =>
        a.Index == b.Index || (a.ClassCode == b.ClassCode && a.Statement == b.Statement && (a.Category == "1" || b.Category == "1"));
}

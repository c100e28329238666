using Chandlery.Core.Classified;
using Chandlery.Core.Judged;

namespace Chandlery.Core.Assessed;

/// <summary>
/// Substances without a CAS number that may be another of the product's substances: lines are added together by number, or by the same
/// name, so that each alone could stay below a limit that both together reach.
/// </summary>
internal static class UnnumberedTwins
{
    public static IEnumerable<Finding> Of(Verdict verdict)
    {
        foreach (Substance one in verdict.Substances.Where(s => IsUnnumbered(s) && s.CasNumbers.Count > 0))
        {
            foreach (Substance other in verdict.Substances.Where(o => o != one && o.CasNumbers.Intersect(one.CasNumbers).Any()))
            {
                yield return new Finding(
                    Gravity.Stop,
                    $"{one.Ingredient.Identity.Name} has no CAS number and may be the same substance as {other.Ingredient.Identity.Name}: their shares are not added together. Declare its CAS number.",
                    verdict.Law.Edition.Harmonised.Clause
                );
            }
        }
    }

    // A product that is known only as a whole has a name of its maker's, and no number that could be declared.
    private static bool IsUnnumbered(Substance substance) =>
        substance.Ingredient.Identity is { Cas: null } identity && substance.Ingredient.Parts.All(p => p.Product != identity.Name);
}

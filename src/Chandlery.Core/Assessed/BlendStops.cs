using Chandlery.Core.Classified;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Judged;
using Chandlery.Core.Law;
using Chandlery.Core.Limits;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Assessed;

/// <summary>What stops the sale by what is in the candle alone: broken limits, unread drafts, unknown substances, banned classes.</summary>
internal static class BlendStops
{
    public static IEnumerable<Finding> Of(Recipe recipe, IReadOnlyList<LimitCheck> limits, ProductKind kind, Verdict verdict)
    {
        Edition edition = verdict.Law.Edition;
        foreach (LimitCheck check in limits.Where(l => l.Holds == false))
        {
            yield return new Finding(
                Gravity.Stop,
                $"Limit broken: {check.Name}: {Figures.Plain(check.Value!.Value)} {check.Unit}, at most {Figures.Plain(check.Limit!.Value)} is allowed. {check.Explanation}",
                Citation.None
            );
        }

        foreach (Oil oil in recipe.Oils.Select(o => o.Oil).Where(o => o.IsUnreviewed))
        {
            yield return new Finding(
                Gravity.Stop,
                $"{oil.Name} was drafted from {string.Join(", ", oil.Draft!.Files)} by a program, and nobody has compared it with the PDF yet: check it, then write who did so under 'reviewed' ({oil.Draft.Place}).",
                Citation.None
            );
        }

        foreach (Substance substance in verdict.Substances.Where(s => !s.IsKnown))
        {
            yield return new Finding(
                Gravity.Stop,
                $"{substance.Ingredient.Identity.Name} is listed without hazard classes, so the label cannot be shown to be complete. Ask the supplier, then write its classes or 'classes: not classified'.",
                edition.ClassificationClause
            );
        }

        foreach (ClassResult result in verdict.Classification.Classes)
        {
            foreach (PublicBan ban in edition.NotForPublic.Where(b => b.Hazards.Contains(result.Category)))
            {
                yield return new Finding(Gravity.Stop, kind.Say("The candle is") + $" {result.Category.Code}: {ban.Says}", ban.Clause);
            }
        }
    }
}

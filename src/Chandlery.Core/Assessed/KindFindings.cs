using Chandlery.Core.Classified;
using Chandlery.Core.Hazards;
using Chandlery.Core.Judged;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;

namespace Chandlery.Core.Assessed;

/// <summary>What a maker must know of a product because of its kind: what a place or a class does not allow it, and what is not known of a liquid.</summary>
internal static class KindFindings
{
    /// <summary>The findings.</summary>
    public static IEnumerable<Finding> Of(Subject subject, Verdict verdict)
    {
        Edition edition = verdict.Law.Edition;
        if (!subject.Kind.Burns && !edition.Label.ShowsHazards)
        {
            yield return new Finding(
                Gravity.Stop,
                $"What is known of {edition.Name} is the label of a candle; what a {subject.Kind.Name} must show there is not known, so no label is printed.",
                Citation.None
            );
        }

        foreach (Finding finding in subject.Kind.State == PhysicalState.Liquid ? OfLiquid(subject, verdict) : [])
        {
            yield return finding;
        }

        foreach (Finding finding in subject.Candle.IsRefilledInShop ? Refilled(subject, verdict) : [])
        {
            yield return finding;
        }
    }

    private static IEnumerable<Finding> OfLiquid(Subject subject, Verdict verdict)
    {
        Edition edition = verdict.Law.Edition;
        if (verdict.FlammabilityUnknown is { } unknown)
        {
            yield return new Finding(
                Gravity.Stop,
                $"{unknown.What} Write the figure with its method under 'liquid: {{ flashPoint: ... }}', or the class that a supplier or laboratory gives the finished liquid under 'liquid: {{ classes: ... }}'.",
                unknown.Clause
            );
        }

        if (verdict.RestsOnViscosity is { } thin)
        {
            yield return new Finding(
                Gravity.Look,
                $"{thin.Category.Code} rests on a viscosity that is not declared and is taken as low: have it measured at 40 °C ('liquid: {{ viscosityMm2PerSecond: ... }}').",
                thin.Rule.Clause
            );
        }

        if (edition.Liquids is { Vapour: { } rule } rules && subject.Candle.Liquid?.FormsFlammableVapour is null)
        {
            IReadOnlyList<Substance> behind = VapourStatements.Behind(rule, rules.Flash, verdict.Classification, verdict.Substances);
            if (behind.Count > 0)
            {
                yield return new Finding(
                    Gravity.Look,
                    $"It holds {string.Join(", ", behind.Select(s => s.Name))}, and nobody has said whether a flammable mixture of vapour and air can form in use ('liquid: {{ formsFlammableVapour: ... }}'): {(verdict.Label.Supplemental.Any(s => s.Code == rule.Statement) ? $"{rule.Statement} is printed until then." : "a competent person decides.")}",
                    rule.Clause
                );
            }
        }
    }

    private static IEnumerable<Finding> Refilled(Subject subject, Verdict verdict)
    {
        if (verdict.Law.Edition.Liquids?.Refill is not { } rule)
        {
            yield return new Finding(
                Gravity.Stop,
                $"No rule on refilling in a shop is known for {verdict.Law.Edition.Name}: sell it in closed packages.",
                Citation.None
            );
            yield break;
        }

        if (verdict.Law.Day < rule.From)
        {
            yield break;
        }

        List<string> banned =
        [
            .. verdict.Classification.Classes.Where(c => rule.Hazards.Contains(c.Category)).Select(c => c.Category.Code),
        ];
        yield return banned.Count > 0
            ? new Finding(
                Gravity.Stop,
                $"It is {string.Join(", ", banned)} and must not be refilled in a shop: sell it in closed packages, without 'refilledInShop'.",
                rule.Clause
            )
            : new Finding(Gravity.Look, $"Refilling a {subject.Kind.Name} in a shop asks for: {rule.Asks}", rule.Clause);
    }
}

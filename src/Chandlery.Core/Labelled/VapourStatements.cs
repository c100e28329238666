using Chandlery.Core.Classified;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;

namespace Chandlery.Core.Labelled;

/// <summary>The statement on vapours of a liquid that is not flammable itself (EUH018 in the EU).</summary>
public static class VapourStatements
{
    /// <summary>The flammable ingredients behind it; empty when the question does not arise.</summary>
    public static IReadOnlyList<Substance> Behind(
        VapourRule rule,
        FlashRule flash,
        Classification classification,
        IReadOnlyList<Substance> substances
    ) => IsFlammable(flash, classification) ? [] : [.. substances.Where(s => s.Hazards.Any(h => rule.Hazards.Contains(h.Category)))];

    /// <summary>
    /// The statement where it is due: on a liquid that is hazardous, though not flammable, and holds flammable ingredients, unless a
    /// competent person has said that no such mixture can form.
    /// </summary>
    internal static IEnumerable<StatementChoice> Due(
        Edition edition,
        Classification classification,
        IReadOnlyList<Substance> substances,
        LiquidFacts? liquid
    )
    {
        if (
            edition.Liquids is not { Vapour: { } rule } rules
            || classification.Classes.Count == 0
            || IsFlammable(rules.Flash, classification)
            || liquid?.FormsFlammableVapour == false
        )
        {
            yield break;
        }

        IReadOnlyList<Substance> behind = Behind(rule, rules.Flash, classification, substances);
        if (behind.Count > 0 || liquid?.FormsFlammableVapour == true)
        {
            yield return new StatementChoice(
                rule.Statement,
                behind.Count > 0
                    ? $"the liquid is not classified as flammable, but holds {string.Join(", ", behind.Select(s => s.Name))}"
                    : "it is declared that a flammable mixture of vapour and air can form",
                rule.Clause
            );
        }
    }

    private static bool IsFlammable(FlashRule flash, Classification classification) =>
        classification.Classes.Any(c => flash.Results.Contains(c.Category));
}

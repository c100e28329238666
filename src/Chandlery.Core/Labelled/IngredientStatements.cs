using Chandlery.Core.Classified;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Labelled;

/// <summary>Supplemental statements that single ingredients call for (CLP Annex II, Part 2 in the EU).</summary>
internal static class IngredientStatements
{
    /// <summary>Those due on a day; the shares of an ingredient's numbers are added.</summary>
    public static IEnumerable<StatementChoice> Due(Edition edition, IReadOnlyList<Substance> substances, DateOnly day)
    {
        foreach (IngredientStatement rule in On(edition, day))
        {
            List<Substance> behind = [.. substances.Where(s => s.CasNumbers.Any(rule.Cas.Contains))];
            var share = new MassPercent(behind.Sum(s => s.Ingredient.High.Value));
            if (share.Reaches(rule.From))
            {
                yield return new StatementChoice(
                    rule.Statement,
                    $"{string.Join(", ", behind.Select(s => s.Name))} makes up to {FigureFormat.English.AtMost(share)} of the candle; the statement is due from {rule.From} on{Doubted(rule)}",
                    rule.Clause
                );
            }
        }
    }

    /// <summary>The rules that bind on a day.</summary>
    public static IEnumerable<IngredientStatement> On(Edition edition, DateOnly day) =>
        edition.IngredientStatements.Where(r => r.InForce.On(day));

    private static string Doubted(IngredientStatement rule) => rule.Stricter.Length == 0 ? "" : $"; {rule.Stricter}";
}

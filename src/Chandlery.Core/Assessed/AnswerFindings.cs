using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Yaml;

namespace Chandlery.Core.Assessed;

/// <summary>What follows from the answers on form and claims.</summary>
internal static class AnswerFindings
{
    public static IEnumerable<Finding> Of(Candle candle, IReadOnlyList<Place> places, ProductSafetyLaw law, DateOnly day)
    {
        List<MarketRules> rules = [.. places.Select(p => law.For(law.Markets, p.Code)).OfType<MarketRules>().Distinct()];
        List<QuestionRow> asked = [.. rules.SelectMany(r => r.Questions).Where(q => q.InForce.On(day))];
        foreach (QuestionRow row in asked.Where(q => candle.Answers.To(q.Question) == true))
        {
            yield return new Finding(row.Stops ? Gravity.Stop : Gravity.Look, row.Says, row.Clause);
        }

        List<ClaimRow> claims = [.. rules.SelectMany(r => r.Claims).Where(c => c.InForce.On(day))];
        foreach (string claim in candle.Answers.Claims ?? [])
        {
            foreach (ClaimRow row in claims.Where(c => c.Words.Any(w => Holds(claim, w))))
            {
                yield return new Finding(row.Stops ? Gravity.Stop : Gravity.Look, $"The claim '{claim}': {row.Says}", row.Clause);
            }
        }

        string[] open =
        [
            .. asked.Select(q => q.Question).Distinct().Where(q => candle.Answers.To(q) is null).Select(EnumName.Of),
            .. claims.Count > 0 && candle.Answers.Claims is null ? new[] { "claims" } : [],
        ];
        if (open.Length > 0)
        {
            yield return new Finding(
                Gravity.Look,
                $"Not answered, so what follows from it is not known: {string.Join(", ", open)}. Write them under 'answers' of the candle.",
                Citation.None
            );
        }
    }

    private static bool Holds(string claim, string word)
    {
        int at = claim.IndexOf(word, StringComparison.OrdinalIgnoreCase);
        return at >= 0
            && (at == 0 || !char.IsLetter(claim[at - 1]))
            && (at + word.Length == claim.Length || !char.IsLetter(claim[at + word.Length]));
    }
}

using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Yaml;

namespace Chandlery.Core.Assessed;

/// <summary>What follows from the answers on form and claims, and from questions that are not answered.</summary>
internal static class AnswerFindings
{
    /// <summary>What follows from what is answered.</summary>
    public static IEnumerable<Finding> Of(Candle candle, IReadOnlyList<Place> places, ProductSafetyLaw law, DateOnly day)
    {
        foreach (QuestionRow row in Asked(places, law, day).Where(q => candle.Answers.To(q.Question) == true))
        {
            yield return new Finding(row.Stops ? Gravity.Stop : Gravity.Look, row.Says, row.Clause);
        }

        foreach (string claim in candle.Answers.Claims ?? [])
        {
            foreach (ClaimRow row in Claims(places, law, day).Where(c => c.Words.Any(w => Holds(claim, w))))
            {
                yield return new Finding(row.Stops ? Gravity.Stop : Gravity.Look, $"The claim '{claim}': {row.Says}", row.Clause);
            }
        }
    }

    /// <summary>What nobody has answered.</summary>
    public static IEnumerable<Finding> Unanswered(Candle candle, IReadOnlyList<Place> places, ProductSafetyLaw law, DateOnly day)
    {
        string[] open =
        [
            .. Asked(places, law, day).Select(q => q.Question).Distinct().Where(q => candle.Answers.To(q) is null).Select(EnumName.Of),
            .. candle.Answers.Claims is null && Claims(places, law, day).Any() ? new[] { "claims" } : [],
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

    private static IEnumerable<QuestionRow> Asked(IReadOnlyList<Place> places, ProductSafetyLaw law, DateOnly day) =>
        Rules(places, law).SelectMany(r => r.Questions).Where(q => q.InForce.On(day));

    private static IEnumerable<ClaimRow> Claims(IReadOnlyList<Place> places, ProductSafetyLaw law, DateOnly day) =>
        Rules(places, law).SelectMany(r => r.Claims).Where(c => c.InForce.On(day));

    private static IEnumerable<MarketRules> Rules(IReadOnlyList<Place> places, ProductSafetyLaw law) =>
        places.Select(p => law.For(law.Markets, p.Code)).OfType<MarketRules>().Distinct();

    private static bool Holds(string claim, string word)
    {
        int at = claim.IndexOf(word, StringComparison.OrdinalIgnoreCase);
        return at >= 0
            && (at == 0 || !char.IsLetter(claim[at - 1]))
            && (at + word.Length == claim.Length || !char.IsLetter(claim[at + word.Length]));
    }
}

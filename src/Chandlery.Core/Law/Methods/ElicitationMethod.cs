using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law.Methods;

/// <summary>
/// Elicitation: someone already allergic reacts to less than what sensitises, so a sensitiser is named on the label from
/// a lower share on (CLP Annex I, Table 3.4.6; one tenth of a specific limit).
/// </summary>
public static class ElicitationMethod
{
    /// <summary>The sensitisers that must be named.</summary>
    public static IEnumerable<Sensitiser> Named(LimitRule rule, IReadOnlyList<Substance> substances)
    {
        if (rule.Elicitation is not { } elicitation)
        {
            yield break;
        }

        foreach (Substance substance in substances)
        {
            foreach (SubstanceHazard hazard in substance.Hazards)
            {
                if (LimitFor(elicitation, hazard) is not { } limit)
                {
                    continue;
                }

                MassPercent share = substance.Ingredient.WholeHigh;
                if (!share.Reaches(limit))
                {
                    continue;
                }

                var line = new WorkingLine(
                    substance.Name,
                    substance.Ingredient.Identity.Cas?.Text,
                    hazard.Category.Code,
                    share.Value,
                    1,
                    limit.Value,
                    share.Value,
                    hazard.Source
                );
                yield return new Sensitiser(
                    substance,
                    hazard,
                    new Working(
                        "share of each sensitiser alone, against its elicitation limit",
                        [line],
                        share.Value,
                        limit.Value,
                        "%",
                        elicitation.Clause,
                        $"{substance.Name} makes up to {share} of the finished candle; from {limit} on it must be named, because a person who is already allergic may react.",
                        rule.Confidence
                    )
                );
            }
        }
    }

    /// <summary>The share from which a hazard must be named; null when it is no sensitiser of this rule.</summary>
    public static MassPercent? LimitFor(Elicitation elicitation, SubstanceHazard hazard)
    {
        foreach ((HazardCategory category, MassPercent general) in elicitation.Limits)
        {
            if (category.Index != hazard.Category.Index)
            {
                continue;
            }

            if (hazard.Limits.Count == 0)
            {
                return general;
            }

            var tenth = new MassPercent(hazard.Limits.Min(l => l.From.Value) * Elicitation.FractionOfSpecificLimit);
            return hazard.MilderLimitsCount || tenth < general ? tenth : general;
        }

        return null;
    }
}

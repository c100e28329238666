using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Classified.Methods;

/// <summary>
/// Elicitation: someone already allergic reacts to less than what sensitises, so a sensitiser is named on the label from
/// a lower share on (CLP Annex I, Table 3.4.6).
/// </summary>
public static class ElicitationMethod
{
    /// <summary>Adds the sensitisers that must be named, the largest share first.</summary>
    public static void AddNamed(LimitRule rule, MixtureIndex index, List<Sensitiser> named)
    {
        Elicitation elicitation = rule.Elicitation!;
        for (int i = 0; i < elicitation.Limits.Count; i++)
        {
            foreach ((int at, SubstanceHazard hazard) in index.With(elicitation.Limits[i].Key))
            {
                Substance substance = index.Substances[at];
                MassPercent limit = LimitFor(elicitation, hazard, substance)!.Value;
                if (substance.Ingredient.WholeHigh.Reaches(limit))
                {
                    named.Add(new Sensitiser(substance, hazard, () => Explain(rule, elicitation, substance, hazard, limit)));
                }
            }
        }
    }

    private static Working Explain(LimitRule rule, Elicitation elicitation, Substance substance, SubstanceHazard hazard, MassPercent limit)
    {
        MassPercent share = substance.Ingredient.WholeHigh;
        var line = new WorkingLine
        {
            Substance = substance.Name,
            Cas = substance.Ingredient.Identity.Cas?.Text,
            Hazard = hazard.Category.Code,
            Percent = share.Value,
            Factor = 1,
            Limit = limit.Value,
            Adds = share.Value,
            Source = hazard.Source,
        };
        return new Working
        {
            Formula = "share of each sensitiser alone, against its elicitation limit",
            Lines = [line],
            Value = share.Value,
            Threshold = limit.Value,
            Unit = "%",
            Clause = elicitation.Clause,
            Sentence =
                $"{substance.Name} makes up to {share} of the finished candle; from {limit} on it must be named, because a person who is already allergic may react.",
            Confidence = rule.Confidence,
        };
    }

    /// <summary>The share from which a hazard must be named; null when it is no sensitiser of this rule.</summary>
    public static MassPercent? LimitFor(Elicitation elicitation, SubstanceHazard hazard, Substance substance)
    {
        foreach ((HazardCategory category, MassPercent general) in elicitation.Limits)
        {
            if (category.Index != hazard.Category.Index)
            {
                continue;
            }

            if (substance.LimitsIn(category.Group) is not { } own)
            {
                return general;
            }

            var tenth = new MassPercent(own.Lowest.Value * elicitation.FractionOfSpecificLimit);
            return own.MilderCount || tenth < general ? tenth : general;
        }

        return null;
    }
}

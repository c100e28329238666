using Chandlery.Core.Composed;
using Chandlery.Core.Hazards;

namespace Chandlery.Core.Classified;

/// <summary>A substance in the candle with the hazards that count in one edition on one day.</summary>
/// <param name="Ingredient">The substance and its share.</param>
/// <param name="IsKnown">False when nobody says anything about its hazards.</param>
/// <param name="Hazards">Its hazards.</param>
/// <param name="FromLimits">
/// Hazards that nobody gives it as a class, but that a specific limit of its own calls for from a share on (an eye limit of a
/// corrosive substance): they count in the rules, and no table of its classes shows them.
/// </param>
/// <param name="OwnLimits">Its specific concentration limits, by hazard group.</param>
/// <param name="Toxicity">Acute toxicity estimates, the lowest per route.</param>
/// <param name="Name">Name to print: a recognised one where there is one.</param>
/// <param name="NonAdditiveKind">Kind of substance whose irritation may not add up, such as aldehyde; null for others.</param>
/// <param name="Remarks">Where sources disagree or a harmonised class overrides.</param>
public sealed record Substance(
    ComposedIngredient Ingredient,
    bool IsKnown,
    IReadOnlyList<SubstanceHazard> Hazards,
    IReadOnlyList<SubstanceHazard> FromLimits,
    IReadOnlyList<OwnLimits> OwnLimits,
    IReadOnlyList<ToxicityEstimate> Toxicity,
    string Name,
    string? NonAdditiveKind,
    IReadOnlyList<string> Remarks
)
{
    /// <summary>Its own limits in a hazard group, or null.</summary>
    public OwnLimits? LimitsIn(string group)
    {
        for (int i = 0; i < OwnLimits.Count; i++)
        {
            if (OwnLimits[i].Group == group)
            {
                return OwnLimits[i];
            }
        }

        return null;
    }
}

using Chandlery.Core.Composed;
using Chandlery.Core.Hazards;

namespace Chandlery.Core.Classified;

/// <summary>A substance in the candle with the hazards that count in one edition on one day.</summary>
/// <param name="Ingredient">The substance and its share.</param>
/// <param name="IsKnown">False when nobody says anything about its hazards.</param>
/// <param name="Hazards">Its hazards.</param>
/// <param name="Toxicity">Acute toxicity estimates, the lowest per route.</param>
/// <param name="Name">Name to print: a recognised one where there is one.</param>
/// <param name="NonAdditiveKind">Kind of substance whose irritation may not add up, such as aldehyde; null for others.</param>
/// <param name="Remarks">Where sources disagree or a harmonised class overrides.</param>
public sealed record Substance(
    ComposedIngredient Ingredient,
    bool IsKnown,
    IReadOnlyList<SubstanceHazard> Hazards,
    IReadOnlyList<ToxicityEstimate> Toxicity,
    string Name,
    string? NonAdditiveKind,
    IReadOnlyList<string> Remarks
);

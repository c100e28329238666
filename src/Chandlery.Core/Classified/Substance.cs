using Chandlery.Core.Composed;
using Chandlery.Core.Hazards;

namespace Chandlery.Core.Classified;

/// <summary>A substance in the candle with the hazards that count in one edition on one day.</summary>
public sealed record Substance
{
    /// <summary>The substance and its share.</summary>
    public required ComposedIngredient Ingredient { get; init; }

    /// <summary>False when nobody says anything about its hazards.</summary>
    public required bool IsKnown { get; init; }

    /// <summary>Its hazards.</summary>
    public required IReadOnlyList<SubstanceHazard> Hazards { get; init; }

    /// <summary>
    /// Hazards that nobody gives it as a class, but that a specific limit of its own calls for from a share on (an eye limit
    /// of a corrosive substance): they count in the rules, and no table of its classes shows them.
    /// </summary>
    public required IReadOnlyList<SubstanceHazard> FromLimits { get; init; }

    /// <summary>Its specific concentration limits, by hazard group.</summary>
    public required IReadOnlyList<OwnLimits> OwnLimits { get; init; }

    /// <summary>Acute toxicity estimates, the lowest per route.</summary>
    public required IReadOnlyList<ToxicityEstimate> Toxicity { get; init; }

    /// <summary>The CAS numbers that it has, or that go with its EC number or its name; none for what no list knows.</summary>
    public IReadOnlyList<string> CasNumbers { get; init; } = [];

    /// <summary>Name to print: a recognised one where there is one.</summary>
    public required string Name { get; init; }

    /// <summary>Where that name comes from.</summary>
    public NameOrigin NameOrigin { get; init; }

    /// <summary>Kind of substance whose irritation may not add up, such as aldehyde; null for others.</summary>
    public required string? NonAdditiveKind { get; init; }

    /// <summary>What must be told of it: its entries in the law's table, and its <see cref="Differences"/>.</summary>
    public required IReadOnlyList<string> Remarks { get; init; }

    /// <summary>Where sheets and harmonised classes differ, and which counts.</summary>
    public IReadOnlyList<string> Differences { get; init; } = [];

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

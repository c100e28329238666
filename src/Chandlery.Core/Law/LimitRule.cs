using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>A rule of limits, worst first.</summary>
public sealed record LimitRule : ClassRule
{
    /// <summary>True where the shares of several substances are added, each by its weight; false where one alone must reach the limit.</summary>
    public required bool AddsSubstances { get; init; }

    /// <summary>The steps, worst first; the first that is reached decides.</summary>
    public required IReadOnlyList<Rung> Rungs { get; init; }

    /// <summary>A result that follows from another rule's; null for none.</summary>
    public required Implication? ImpliedBy { get; init; }

    /// <summary>From which share sensitisers are named; null for rules that know no such share.</summary>
    public required Elicitation? Elicitation { get; init; }

    /// <summary>The other method for substances whose effects may not add up; null for none.</summary>
    public required NonAdditive? WhereAddingMayFail { get; init; }

    /// <summary>When unknown hazards of this group are said; null where the law asks no such statement.</summary>
    public required UnknownAquatic? Unknown { get; init; }

    /// <summary>The rule holds only of liquids whose kinematic viscosity at 40 °C is no higher; null where it does not matter.</summary>
    public SquareMillimetresPerSecond? HighestViscosity { get; init; }

    /// <inheritdoc/>
    public override IEnumerable<HazardCategory> Results => Rungs.Select(r => r.Result).Distinct();
}

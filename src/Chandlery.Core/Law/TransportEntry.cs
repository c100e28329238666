using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>An entry of the list of dangerous goods.</summary>
/// <param name="Classes">Classes that lead to it.</param>
/// <param name="UnNumber">UN number.</param>
/// <param name="Name">Proper shipping name.</param>
/// <param name="Class">Transport hazard class.</param>
/// <param name="PackingGroup">Packing group.</param>
/// <param name="NamesSubstances">Whether the name carries the names of substances.</param>
/// <param name="IsFreeWhenSmall">Whether small packages are free of the other provisions.</param>
public sealed record TransportEntry(
    IReadOnlyList<HazardCategory> Classes,
    string UnNumber,
    string Name,
    string Class,
    string PackingGroup,
    bool NamesSubstances,
    bool IsFreeWhenSmall
)
{
    /// <summary>The most that an inner package of a limited quantity holds; null where there is no such relief.</summary>
    public Millilitres? LimitedUpTo { get; init; }
}

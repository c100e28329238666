using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>How a candle travels.</summary>
/// <param name="ClassifiedBy">The edition whose classification decides: transport law does not change with the place of sale.</param>
/// <param name="Classes">Classes that make it dangerous goods.</param>
/// <param name="UnNumber">UN number.</param>
/// <param name="Name">Proper shipping name, to be followed by the names of substances.</param>
/// <param name="Class">Transport hazard class.</param>
/// <param name="PackingGroup">Packing group.</param>
/// <param name="MostNames">How many substances the name carries at most.</param>
/// <param name="Clause">Where it stands.</param>
/// <param name="SmallUpTo">Packages up to this net mass are free.</param>
/// <param name="SmallClause">Where that stands.</param>
public sealed record TransportRules(
    string ClassifiedBy,
    IReadOnlyList<HazardCategory> Classes,
    string UnNumber,
    string Name,
    string Class,
    string PackingGroup,
    int MostNames,
    Citation Clause,
    Grams SmallUpTo,
    Citation SmallClause
);

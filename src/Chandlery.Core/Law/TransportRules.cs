using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>How a candle travels.</summary>
public sealed record TransportRules
{
    /// <summary>The edition whose classification decides: transport law does not change with the place of sale.</summary>
    public required string ClassifiedBy { get; init; }

    /// <summary>Classes that make it dangerous goods.</summary>
    public required IReadOnlyList<HazardCategory> Classes { get; init; }

    /// <summary>UN number.</summary>
    public required string UnNumber { get; init; }

    /// <summary>Proper shipping name, to be followed by the names of substances.</summary>
    public required string Name { get; init; }

    /// <summary>Transport hazard class.</summary>
    public required string Class { get; init; }

    /// <summary>Packing group.</summary>
    public required string PackingGroup { get; init; }

    /// <summary>How many substances the name carries at most.</summary>
    public required int MostNames { get; init; }

    /// <summary>Where it stands.</summary>
    public required Citation Clause { get; init; }

    /// <summary>Packages up to this net mass are free.</summary>
    public required Grams SmallUpTo { get; init; }

    /// <summary>Where that stands.</summary>
    public required Citation SmallClause { get; init; }
}

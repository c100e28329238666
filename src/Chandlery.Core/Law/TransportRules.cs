using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>How a candle travels.</summary>
public sealed record TransportRules
{
    /// <summary>The edition whose classification decides: transport law does not change with the place of sale.</summary>
    public required string ClassifiedBy { get; init; }

    /// <summary>The entry of solids.</summary>
    public required TransportEntry Solid { get; init; }

    /// <summary>The entries of liquids; the first that one of their classes leads to holds.</summary>
    public required IReadOnlyList<TransportEntry> Liquids { get; init; }

    /// <summary>The most that a package of limited quantities weighs, gross.</summary>
    public required Grams LimitedGross { get; init; }

    /// <summary>Where limited quantities stand.</summary>
    public required Citation LimitedClause { get; init; }

    /// <summary>The classes of all entries of a state.</summary>
    public IEnumerable<TransportEntry> EntriesOf(PhysicalState state) => state == PhysicalState.Liquid ? Liquids : [Solid];

    /// <summary>How many substances the name carries at most.</summary>
    public required int MostNames { get; init; }

    /// <summary>Where it stands.</summary>
    public required Citation Clause { get; init; }

    /// <summary>Packages up to this net mass are free.</summary>
    public required Grams SmallUpTo { get; init; }

    /// <summary>Packages of liquids up to this volume are free.</summary>
    public required Millilitres SmallLiquidUpTo { get; init; }

    /// <summary>Where that stands.</summary>
    public required Citation SmallClause { get; init; }
}

using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law.ProductSafety;

/// <summary>When somebody must be named beside the maker.</summary>
/// <param name="Role">The role.</param>
/// <param name="InForce">When it holds.</param>
/// <param name="SoldIn">Places of sale for which it holds; empty for all under the law.</param>
/// <param name="EstablishedIn">Countries in one of which somebody must be established: the maker, or else who has the role.</param>
/// <param name="Stops">Whether the candle must not be sold without.</param>
/// <param name="Says">What the law wants.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record RoleDuty(
    MarketRole Role,
    InForce InForce,
    IReadOnlyList<string> SoldIn,
    IReadOnlyList<string> EstablishedIn,
    bool Stops,
    string Says,
    Citation Clause
);

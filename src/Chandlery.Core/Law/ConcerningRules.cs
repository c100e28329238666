using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>Substances of concern that the safety data sheet tells of beside its classes.</summary>
/// <param name="Persistent">Persistent, bioaccumulative and toxic ones.</param>
/// <param name="EndocrineForHealth">Endocrine disruptors for health.</param>
/// <param name="EndocrineForEnvironment">Endocrine disruptors for the environment.</param>
/// <param name="From">The share of the candle from which they are told.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record ConcerningRules(
    IReadOnlyList<HazardCategory> Persistent,
    IReadOnlyList<HazardCategory> EndocrineForHealth,
    IReadOnlyList<HazardCategory> EndocrineForEnvironment,
    MassPercent From,
    Citation Clause
)
{
    /// <summary>All of them.</summary>
    public IEnumerable<HazardCategory> All => Persistent.Concat(EndocrineForHealth).Concat(EndocrineForEnvironment);
}

using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>A word that may stand for ingredients in a notification to the poison centres.</summary>
/// <param name="Name">The word.</param>
/// <param name="Of">What it may stand for.</param>
/// <param name="UpTo">The most that all ingredients called so may come to.</param>
/// <param name="NotWhereClassedFor">Areas of hazard that keep an ingredient from being called so.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record GenericIdentifier(
    string Name,
    GenericSource Of,
    MassPercent UpTo,
    IReadOnlyList<HazardArea> NotWhereClassedFor,
    Citation Clause
);

using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>What may be left off small packages for some classes.</summary>
/// <param name="Hazards">The classes.</param>
/// <param name="HazardStatement">Whether the hazard statement may go.</param>
/// <param name="Precautionary">Whether the precautionary statements may go.</param>
/// <param name="NotForPublic">True when it may only where the candle is not for the public, which candles always are here.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record Relief(
    IReadOnlyList<HazardCategory> Hazards,
    bool HazardStatement,
    bool Precautionary,
    bool NotForPublic,
    Citation Clause
);

using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>Classes of mixtures that may not go to the general public.</summary>
/// <param name="Hazards">The classes.</param>
/// <param name="Says">What is said of them; follows "The candle is (class): ".</param>
/// <param name="Clause">Where it stands.</param>
public sealed record PublicBan(IReadOnlyList<HazardCategory> Hazards, string Says, Citation Clause);

using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>A set of changes to a law that binds from one day.</summary>
/// <param name="InForce">Its first day, and that for what was on the market before.</param>
/// <param name="Parts">What it changes: articles and points.</param>
/// <param name="Says">What that means for a candle maker.</param>
/// <param name="Clause">The act.</param>
/// <param name="Confidence">How it was checked.</param>
public sealed record Amendment(InForce InForce, string Parts, string Says, Citation Clause, string Confidence);

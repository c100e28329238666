using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>The choice of precautionary statements.</summary>
/// <param name="Most">How many are normally printed.</param>
/// <param name="MostClause">Where that stands.</param>
/// <param name="Offers">All offers.</param>
public sealed record PrecautionRules(int Most, Citation MostClause, IReadOnlyList<PrecautionOffer> Offers);

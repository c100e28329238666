using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>From which share a sensitiser is named on the label although the mixture need not be classified for it.</summary>
/// <param name="Statement">The supplemental statement, EUH208.</param>
/// <param name="Clause">Where it stands.</param>
/// <param name="FractionOfSpecificLimit">A specific limit replaces the general one by this fraction of itself.</param>
/// <param name="Limits">Limit per category.</param>
public sealed record Elicitation(
    StatementCode Statement,
    Citation Clause,
    double FractionOfSpecificLimit,
    IReadOnlyList<KeyValuePair<HazardCategory, MassPercent>> Limits
);

using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Classified;

/// <summary>The share of ingredients with an unknown hazard that label and safety data sheet state.</summary>
/// <param name="Share">Percent of the candle.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record UnknownStatement(MassPercent Share, Citation Clause);

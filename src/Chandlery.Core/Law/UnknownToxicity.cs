using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>How ingredients of unknown acute toxicity are treated.</summary>
/// <param name="TakenOutAbove">Above this share they are taken out of the hundred.</param>
/// <param name="SaidFrom">From this share of one such ingredient on the label says so.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record UnknownToxicity(MassPercent TakenOutAbove, MassPercent SaidFrom, Citation Clause);

using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>When label and safety data sheet say that some ingredients' hazards to the aquatic environment are unknown.</summary>
/// <param name="SaidFrom">The share from which one such ingredient counts.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record UnknownAquatic(MassPercent SaidFrom, Citation Clause);

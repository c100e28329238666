using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>The other method for substances whose effects may not add up (acids, bases, aldehydes, phenols...).</summary>
/// <param name="Clause">Where it stands.</param>
/// <param name="Confidence">How the row was checked.</param>
/// <param name="Rungs">Limits for one such substance alone, worst first.</param>
public sealed record NonAdditive(Citation Clause, string Confidence, IReadOnlyList<Rung> Rungs);

using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>A statement on a liquid that is not flammable itself, but may form a flammable mixture of vapour and air.</summary>
/// <param name="Statement">The statement.</param>
/// <param name="Hazards">Classes of ingredients that make it possible.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record VapourRule(StatementCode Statement, IReadOnlyList<HazardCategory> Hazards, Citation Clause);

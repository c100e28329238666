using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>A sentence of law in our words, with its clause.</summary>
/// <param name="Says">What it means for the candle.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record DutyClause(string Says, Citation Clause);

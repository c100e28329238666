using Chandlery.Core.Hazards;

namespace Chandlery.Core.Classified;

/// <summary>Why a candle has a class.</summary>
/// <param name="Statement">Hazard statement, with the letters that say more where all causes agree.</param>
/// <param name="Working">How the class was found.</param>
/// <param name="Causes">The substances behind it, the one that adds most first.</param>
public sealed record Explanation(StatementCode Statement, Working Working, IReadOnlyList<Substance> Causes);

using Chandlery.Core.Declared;

namespace Chandlery.Core.Making.Stores;

/// <summary>What is left of a lot.</summary>
/// <param name="Lot">The lot.</param>
/// <param name="Left">How much is left, in its material's unit; null when not known.</param>
/// <param name="Keeping">Whether its best-before day has come.</param>
public sealed record LotLine(Lot Lot, double? Left, Keeping Keeping);

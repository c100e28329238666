using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Composed;

/// <summary>A wax's share of the finished candle.</summary>
/// <param name="Wax">A plain wax, never a blend.</param>
/// <param name="Share">Percent of the finished candle.</param>
public sealed record WaxShare(Wax Wax, MassPercent Share);

using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Composed;

/// <summary>An oil's share of the finished candle.</summary>
/// <param name="Oil">The oil.</param>
/// <param name="Share">Percent of the finished candle.</param>
/// <param name="ShareOfBlend">Percent of the oil blend.</param>
public sealed record OilShare(Oil Oil, MassPercent Share, MassPercent ShareOfBlend);

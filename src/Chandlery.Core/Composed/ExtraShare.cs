using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Composed;

/// <summary>An extra's share.</summary>
/// <param name="Extra">The extra.</param>
/// <param name="Share">Percent of the finished candle.</param>
/// <param name="OfWax">Percent of the wax in the scented melt.</param>
public sealed record ExtraShare(Extra Extra, MassPercent Share, MassPercent OfWax);

using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>A second pour.</summary>
/// <param name="Scented">True when it comes from the same scented melt: then it does not dilute.</param>
/// <param name="Percent">Its share of the finished candle; null when weighed.</param>
/// <param name="Weight">Its mass; null when given in percent.</param>
public sealed record TopUp(bool Scented, MassPercent? Percent, Grams? Weight);

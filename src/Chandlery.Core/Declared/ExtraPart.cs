using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>An extra in a candle.</summary>
/// <param name="Extra">Which extra.</param>
/// <param name="Percent">Percent of the wax; null when weighed.</param>
/// <param name="Weight">Grams; null when given in percent.</param>
public sealed record ExtraPart(Reference Extra, MassPercent? Percent, Grams? Weight);

using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>Working temperatures of a candle.</summary>
/// <param name="Melt">Melting temperature.</param>
/// <param name="AddFragrance">At which the oil is stirred in.</param>
/// <param name="Pour">Pouring temperature.</param>
/// <param name="TopUp">Temperature of the second pour.</param>
public sealed record WorkingTemperatures(Celsius? Melt, Celsius? AddFragrance, Celsius? Pour, Celsius? TopUp);

namespace Chandlery.Core.Law;

/// <summary>Figures of the burn-safety advice; common practice, no law.</summary>
/// <param name="IndoorDistanceCm">Distance between candles indoors, centimetres.</param>
/// <param name="OutdoorDistanceCm">Distance between candles outdoors, centimetres.</param>
/// <param name="FirstBurnHoursPerCm">Hours of the first burn per centimetre of diameter per wick row.</param>
/// <param name="LongestBurnHours">Longest burn, hours.</param>
/// <param name="RemainingWaxMm">Wax left when burning must stop, millimetres.</param>
public sealed record BurnAdvice(
    double IndoorDistanceCm,
    double OutdoorDistanceCm,
    double FirstBurnHoursPerCm,
    double LongestBurnHours,
    double RemainingWaxMm
);

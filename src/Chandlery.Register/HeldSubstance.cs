namespace Chandlery.Register;

/// <summary>A substance of the finished candle.</summary>
/// <param name="Name">Name.</param>
/// <param name="Cas">CAS number; empty when none is known.</param>
/// <param name="HighPercent">Most of it in the candle, percent by mass.</param>
public sealed record HeldSubstance(string Name, string Cas, double HighPercent);

namespace Chandlery.Core.Making;

/// <summary>Something to weigh, as told to programs.</summary>
/// <param name="Name">Oil, wax or extra.</param>
/// <param name="Kind">What it is, in a word.</param>
/// <param name="Grams">How much for all candles.</param>
public sealed record BenchPortion(string Name, string Kind, double Grams);

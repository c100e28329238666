namespace Chandlery.Core.Making.Stores;

/// <summary>How many of a candle the store is enough for.</summary>
/// <param name="CandleId">Its file name without ending.</param>
/// <param name="Name">Its name.</param>
/// <param name="Count">How many; null when something that it needs is not known.</param>
/// <param name="Scarce">What runs out first, or what is not known.</param>
public sealed record CanMake(string CandleId, string Name, int? Count, string Scarce);

namespace Chandlery.Core.Declared;

/// <summary>An IFRA certificate of conformity.</summary>
/// <param name="Amendment">Number of the amendment it is made out for.</param>
/// <param name="Date">Its date.</param>
/// <param name="Limits">Limit per category ("1" to "12", with letters); category 12 is the candle's.</param>
public sealed record IfraCertificate(int Amendment, DateOnly Date, IReadOnlyDictionary<string, IfraLimit> Limits);

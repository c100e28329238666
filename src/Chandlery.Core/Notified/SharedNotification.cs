namespace Chandlery.Core.Notified;

/// <summary>What a candle's notification has to do with the maker's other candles.</summary>
/// <param name="Packages">The packages of all candles of this composition, its own first.</param>
/// <param name="GroupWith">Names of the candles that may be told in one group with it.</param>
public sealed record SharedNotification(IReadOnlyList<SoldPackage> Packages, IReadOnlyList<string> GroupWith);

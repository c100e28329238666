namespace Chandlery.Core.Declared;

/// <summary>A second pour from the same scented melt: it does not dilute.</summary>
/// <param name="Amount">How much is held back, a share being one of the finished candle; null when not declared.</param>
public sealed record ScentedTopUp(Amount? Amount) : TopUp;

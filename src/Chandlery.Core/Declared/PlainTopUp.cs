namespace Chandlery.Core.Declared;

/// <summary>A second pour of plain wax: it dilutes the fragrance.</summary>
/// <param name="Amount">How much; a share is one of the finished candle.</param>
public sealed record PlainTopUp(Amount Amount) : TopUp;

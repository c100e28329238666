namespace Chandlery.Core.Declared;

/// <summary>An extra in a candle.</summary>
/// <param name="Extra">Which extra.</param>
/// <param name="Amount">How much; a share is one of the wax.</param>
public sealed record ExtraPart(Reference Extra, Amount Amount);

using Chandlery.Core.Quantities;

namespace Chandlery.Core.Assessed;

/// <summary>How the e-mark of a candle that uses it stands.</summary>
/// <param name="Height">How high it is printed; null where it may not be.</param>
/// <param name="WhyNot">Why it may not be printed; null where it may.</param>
public sealed record EMarkState(Millimetres? Height, Finding? WhyNot);

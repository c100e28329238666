using Chandlery.Core.Quantities;

namespace Chandlery.Core.Making.Stores;

/// <summary>A part of what a candle costs.</summary>
/// <param name="What">What it is.</param>
/// <param name="Amount">How much of it, with its unit.</param>
/// <param name="Cost">What it costs; null when not known.</param>
/// <param name="By">By which lot or rate, or what is missing.</param>
public sealed record CostPart(string What, string Amount, Money? Cost, string By);

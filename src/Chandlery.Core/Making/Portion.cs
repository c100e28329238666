using Chandlery.Core.Quantities;

namespace Chandlery.Core.Making;

/// <summary>Something to weigh.</summary>
/// <param name="Name">Oil, wax or extra.</param>
/// <param name="Kind">What it is, in a word.</param>
/// <param name="Mass">How much for all candles.</param>
public sealed record Portion(string Name, string Kind, Grams Mass);

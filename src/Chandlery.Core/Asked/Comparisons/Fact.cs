namespace Chandlery.Core.Asked.Comparisons;

/// <summary>One fact of a candle with the reason for it.</summary>
/// <param name="Text">The fact, such as a class.</param>
/// <param name="Why">Why it holds.</param>
public sealed record Fact(string Text, string Why);

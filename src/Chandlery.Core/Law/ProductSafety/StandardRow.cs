namespace Chandlery.Core.Law.ProductSafety;

/// <summary>A standard that a candle can be held to.</summary>
/// <param name="Name">Its number and year.</param>
/// <param name="About">What it is about.</param>
/// <param name="Applied">What of it is applied here, and what is not.</param>
public sealed record StandardRow(string Name, string About, string Applied);

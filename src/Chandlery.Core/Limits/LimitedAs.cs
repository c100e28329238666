namespace Chandlery.Core.Limits;

/// <summary>As what sort of product something is checked against limits.</summary>
/// <param name="Name">What it is called inside a sentence.</param>
/// <param name="Burns">Whether it burns with a flame of its own.</param>
/// <param name="IfraCategory">The category that IFRA certificates are asked for; null when nobody has said which.</param>
public sealed record LimitedAs(string Name, bool Burns, string? IfraCategory);

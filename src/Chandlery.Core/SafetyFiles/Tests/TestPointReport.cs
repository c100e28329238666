namespace Chandlery.Core.SafetyFiles.Tests;

/// <summary>One thing that a burn test looks at, for programs.</summary>
/// <param name="Subject">What it is.</param>
/// <param name="Measured">The worst that was seen.</param>
/// <param name="Limit">The maker's limit.</param>
/// <param name="Holds">Whether it holds; null when it cannot be told.</param>
public sealed record TestPointReport(string Subject, string Measured, string Limit, bool? Holds);

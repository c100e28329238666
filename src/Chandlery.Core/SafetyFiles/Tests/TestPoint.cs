namespace Chandlery.Core.SafetyFiles.Tests;

/// <summary>One thing that a burn test looks at.</summary>
/// <param name="Subject">What it is.</param>
/// <param name="Measured">The worst that was seen; empty when nothing was measured.</param>
/// <param name="Limit">The maker's limit; empty when none is set.</param>
/// <param name="Holds">Whether it holds; null when it cannot be told.</param>
public sealed record TestPoint(TestSubject Subject, string Measured, string Limit, bool? Holds);

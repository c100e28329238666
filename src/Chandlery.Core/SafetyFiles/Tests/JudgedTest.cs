using Chandlery.Core.Declared;

namespace Chandlery.Core.SafetyFiles.Tests;

/// <summary>A burn test with what came of it.</summary>
/// <param name="Test">The test.</param>
/// <param name="Points">What it looked at.</param>
/// <param name="Verdict">What came of it.</param>
public sealed record JudgedTest(Test Test, IReadOnlyList<TestPoint> Points, TestVerdict Verdict);

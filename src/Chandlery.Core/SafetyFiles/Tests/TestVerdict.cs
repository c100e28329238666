namespace Chandlery.Core.SafetyFiles.Tests;

/// <summary>What came of a burn test.</summary>
public enum TestVerdict
{
    /// <summary>Every limit that is set holds.</summary>
    Passed,

    /// <summary>A limit is broken.</summary>
    Failed,

    /// <summary>No limit is broken, and something was not measured or has no limit.</summary>
    Incomplete,
}

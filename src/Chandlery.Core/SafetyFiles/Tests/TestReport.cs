namespace Chandlery.Core.SafetyFiles.Tests;

/// <summary>The burn tests of a candle for programs.</summary>
/// <param name="Candle">The candle's file name without its ending.</param>
/// <param name="Done">Whether it is tested as it is and nothing is missing.</param>
/// <param name="Tests">Its tests.</param>
/// <param name="Missing">What must be tested.</param>
public sealed record TestReport(string Candle, bool Done, IReadOnlyList<TestLineReport> Tests, IReadOnlyList<string> Missing)
{
    /// <summary>The report of a candle's tests.</summary>
    public static TestReport Of(CandleTests tests) =>
        new(
            tests.Candle.Id,
            tests.IsDone,
            [.. tests.Valid.Select(t => TestLineReport.Of(t, "")), .. tests.Outdated.Select(t => TestLineReport.Of(t.Test, t.Changed))],
            tests.Missing
        );
}

using Chandlery.Yaml;

namespace Chandlery.Core.SafetyFiles.Tests;

/// <summary>A burn test for programs.</summary>
/// <param name="Test">Its file name without its ending.</param>
/// <param name="On">The day.</param>
/// <param name="Samples">How many samples.</param>
/// <param name="Verdict">passed, failed or incomplete.</param>
/// <param name="Changed">What has changed since; empty for a test of the candle as it is.</param>
/// <param name="Points">What it looked at.</param>
public sealed record TestLineReport(
    string Test,
    string On,
    int Samples,
    string Verdict,
    string Changed,
    IReadOnlyList<TestPointReport> Points
)
{
    /// <summary>The report of a test.</summary>
    public static TestLineReport Of(JudgedTest judged, string changed) =>
        new(
            judged.Test.Id,
            IsoDay.Plain(judged.Test.On),
            judged.Test.Samples.Count,
            judged.Verdict.ToString().ToLowerInvariant(),
            changed,
            [.. judged.Points.Select(p => new TestPointReport(CandleTests.Called(p.Subject), p.Measured, p.Limit, p.Holds))]
        );
}

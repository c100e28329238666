using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.SafetyFiles.Tests;

/// <summary>
/// Gives the verdict on a burn test by the maker's own limits: the limits of the standards are not at hand. What must never be, a
/// broken vessel or a wick that lights again by itself, needs no limit.
/// </summary>
public static class TestJudge
{
    /// <summary>The verdict.</summary>
    public static JudgedTest Judge(Test test)
    {
        List<Burn> burns = [.. test.Samples.SelectMany(s => s.Burns)];
        List<TestPoint> points =
        [
            Highest(TestSubject.Flame, "mm", burns.Select(b => b.Flame?.Value), test.Limits.Flame?.Value),
            Highest(TestSubject.Heat, "°C", burns.Select(b => b.VesselHeat?.Value), test.Limits.VesselHeat?.Value),
            Soot([.. burns.Select(b => b.Soot)], test.Limits.Soot),
            Flags(
                TestSubject.Slope,
                [.. test.Samples.Select(s => s.FellOnSlope)],
                bad: true,
                "fell",
                test.Limits.SlopeDegrees is { } degrees ? $"stands at {Plain(degrees)}°" : "",
                test.Limits.SlopeDegrees is not null
            ),
            Flags(
                TestSubject.Vessel,
                [.. test.Samples.Select(s => s.VesselWhole)],
                bad: false,
                "broken",
                "whole at the end",
                hasLimit: true
            ),
            Flags(TestSubject.Relit, [.. burns.Select(b => b.Relit)], bad: true, "relit", "never", hasLimit: true),
            Flags(TestSubject.End, [.. test.Samples.Select(s => s.WentOut)], bad: false, "burnt on", "goes out by itself", hasLimit: true),
        ];
        // What stands by itself has no vessel that could get hot or break.
        if (test.Vessel is null)
        {
            points.RemoveAll(p => p.Subject is TestSubject.Heat or TestSubject.Vessel);
        }

        return new JudgedTest(
            test,
            points,
            points.Exists(p => p.Holds == false) ? TestVerdict.Failed
                : points.Exists(p => p.Holds is null) ? TestVerdict.Incomplete
                : TestVerdict.Passed
        );
    }

    // A burn that was not measured could have been the worst: then nothing is said to hold.
    private static TestPoint Highest(TestSubject subject, string unit, IEnumerable<double?> values, double? limit)
    {
        List<double?> all = [.. values];
        double? worst = all.Max();
        bool? holds =
            limit is not { } most || worst is null ? null
            : worst > most ? false
            : all.TrueForAll(v => v is not null) ? true
            : null;
        return new TestPoint(
            subject,
            worst is { } seen ? $"{Plain(seen)} {unit}{(all.TrueForAll(v => v is not null) ? "" : ", not in every burn")}" : "",
            limit is { } set ? $"{Plain(set)} {unit}" : "",
            holds
        );
    }

    private static TestPoint Soot(List<SootSeen?> seen, SootSeen? limit)
    {
        SootSeen? worst = seen.Max();
        bool? holds =
            limit is null || worst is null ? null
            : worst > limit ? false
            : seen.TrueForAll(s => s is not null) ? true
            : null;
        return new TestPoint(TestSubject.Soot, Word(worst), Word(limit), holds);
    }

    private static TestPoint Flags(TestSubject subject, List<bool?> seen, bool bad, string word, string limit, bool hasLimit)
    {
        int wrong = seen.Count(s => s == bad);
        int unknown = seen.Count(s => s is null);
        bool? holds =
            wrong > 0 ? false
            : unknown > 0 || !hasLimit ? null
            : true;
        string measured = unknown == seen.Count ? "" : $"{word}: {wrong} of {seen.Count}{(unknown > 0 ? $", {unknown} not noted" : "")}";
        return new TestPoint(subject, measured, limit, holds);
    }

    private static string Word(SootSeen? soot) => soot?.ToString().ToLowerInvariant() ?? "";

    private static string Plain(double value) => Figures.Plain(value);
}

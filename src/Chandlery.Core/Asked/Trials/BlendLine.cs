namespace Chandlery.Core.Asked.Trials;

/// <summary>What was found for a trial under one edition, as told to programs.</summary>
public sealed record BlendLine
{
    /// <summary>Edition of the law.</summary>
    public required string Edition { get; init; }

    /// <summary>Places of sale under it.</summary>
    public required IReadOnlyList<string> Places { get; init; }

    /// <summary>What the trial does not keep to as it is.</summary>
    public required IReadOnlyList<string> MissedNow { get; init; }

    /// <summary>The largest load, percent of the wax; null when there is none or it is not known.</summary>
    public required double? LargestLoadPercentOfWax { get; init; }

    /// <summary>What begins beyond it.</summary>
    public required IReadOnlyList<string> Beyond { get; init; }

    /// <summary>The nearest blend: each oil's name and percent; null when none was found.</summary>
    public required IReadOnlyList<string>? Nearest { get; init; }

    /// <summary>How much of the blend is exchanged in it, percent.</summary>
    public required double? ExchangedPercent { get; init; }

    /// <summary>Whether no blend in hundredths of a percent is nearer, or, where none was found, there is none.</summary>
    public required bool NearestIsProven { get; init; }

    /// <summary>The line of a solution.</summary>
    public static BlendLine Of(TrialSolution s) =>
        new()
        {
            Edition = s.Edition.Id,
            Places = [.. s.Places.Select(p => p.Code)],
            MissedNow = s.MissedNow,
            LargestLoadPercentOfWax = s.LargestLoad is { } load ? Math.Round(load.Load.Percent.Value, 2) : null,
            Beyond = s.LargestLoad?.Beyond ?? [],
            Nearest = s.Nearest is { } near ? TrialLine.BlendOf(near.Recipe) : null,
            NearestIsProven = s.IsNearestProven,
            ExchangedPercent = s.Nearest is { } moved ? Math.Round(moved.MovedPercent, 2) : null,
        };
}

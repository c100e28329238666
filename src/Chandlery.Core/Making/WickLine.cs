using Chandlery.Core.Declared;
using Chandlery.Core.Making.Layouts;

namespace Chandlery.Core.Making;

/// <summary>The wicks of a candle, as told to programs. Lengths are millimetres, from the middle of a round floor or a corner of another.</summary>
public sealed record WickLine
{
    /// <summary>The candle's file name without ending.</summary>
    public required string Candle { get; init; }

    /// <summary>How many in each piece of the vessel.</summary>
    public required int Count { get; init; }

    /// <summary>How many pieces the vessel is made of, such as the cups of a box of tea lights.</summary>
    public required int Pieces { get; init; }

    /// <summary>Places of the layout with most room; empty when the inside is not declared.</summary>
    public required IReadOnlyList<FloorPoint> Best { get; init; }

    /// <summary>Distance of the closest neighbours in it.</summary>
    public required double? NeighboursMm { get; init; }

    /// <summary>Distance of the closest from the wall.</summary>
    public required double? WallMm { get; init; }

    /// <summary>Places of the best symmetric layout; empty where there is none.</summary>
    public required IReadOnlyList<FloorPoint> Symmetric { get; init; }

    /// <summary>Whether there are too many or too few.</summary>
    public required string Verdict { get; init; }

    /// <summary>In words.</summary>
    public required string Note { get; init; }

    /// <summary>The line of a plan.</summary>
    public static WickLine Of(Candle candle, WickPlan plan) =>
        new()
        {
            Candle = candle.Id,
            Count = plan.Count,
            Pieces = plan.Pieces,
            Best = Rounded(plan.Best),
            NeighboursMm = plan.Spacing is { } apart ? Math.Round(apart.Value, 2) : null,
            WallMm = plan.Best is { } best ? Math.Round(best.Wall.Value, 2) : null,
            Symmetric = Rounded(plan.Symmetric),
            Verdict = plan.Verdict.ToString(),
            Note = plan.Note,
        };

    private static IReadOnlyList<FloorPoint> Rounded(WickLayout? layout) =>
        [.. (layout?.Wicks ?? []).Select(w => new FloorPoint(Math.Round(w.XMm, 2), Math.Round(w.YMm, 2)))];
}

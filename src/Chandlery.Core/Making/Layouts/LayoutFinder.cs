namespace Chandlery.Core.Making.Layouts;

/// <summary>
/// Finds where wicks stand with the greatest free circle around each, to neighbours and to the wall: the best packing of equal
/// circles. There is no formula for it; many starts are relaxed and the best kept, always the same ones in the same order.
/// </summary>
public static class LayoutFinder
{
    /// <summary>Most wicks that a layout is looked for.</summary>
    public const int MostWicks = 200;

    private const int MostStarts = 100;
    private const int WorkOfStarts = 20_000;
    private const int FewestStarts = 4;
    private const int MostHalvings = 60;
    private const double Finest = 1e-10;
    private const double FirstTry = 0.8;
    private const double Better = 1e-5;

    /// <summary>The best layout that was found.</summary>
    /// <param name="floor">The vessel's floor.</param>
    /// <param name="count">How many wicks, 1 to <see cref="MostWicks"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The count is outside its range.</exception>
    public static WickLayout Best(Floor floor, int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, MostWicks);
        var draw = new Draw();
        int starts = Math.Clamp(WorkOfStarts / (count * count), FewestStarts, MostStarts);
        double[] best = Grown(floor, RingLayout.Best(floor, count) is { } rings ? Flat(rings.Wicks) : Inside(floor, count, draw));
        for (int i = 0; i < starts; i++)
        {
            // Most starts end where there is no more room than was found before: one look at that radius tells.
            double[] at = new Crowding(floor, Free(floor, best) * (1 + Better)).Relax(Inside(floor, count, draw));
            if (Free(floor, at) > Free(floor, best) * (1 + (Better / 2)))
            {
                best = Grown(floor, at);
            }
        }

        return WickLayout.Of(floor, Turned(floor, Points(best)));
    }

    // The radius grows as long as the circles find room, by halves of what is left to the bound that area sets.
    private static double[] Grown(Floor floor, double[] start)
    {
        double highest = Math.Sqrt(floor.AreaSquareMm / (Math.PI * start.Length / 2));
        double[] best = new Crowding(floor, Math.Max(highest * FirstTry, Free(floor, start))).Relax(start);
        double lowest = Math.Max(0, Free(floor, best));
        double first = highest;
        for (int i = 0; i < MostHalvings && highest - lowest > Finest * first; i++)
        {
            double middle = (lowest + highest) / 2;
            double[] at = new Crowding(floor, middle).Relax(best);
            double free = Free(floor, at);
            if (free > lowest)
            {
                lowest = free;
                best = at;
            }

            if (free < middle * (1 - (Finest / 10)))
            {
                highest = middle;
            }
        }

        return best;
    }

    private static double Free(Floor floor, double[] at) => WickLayout.Of(floor, Points(at)).FreeRadius.Value;

    private static double[] Inside(Floor floor, int count, Draw draw)
    {
        var places = new List<double>();
        while (places.Count < 2 * count)
        {
            FloorPoint low = floor.Lowest;
            FloorPoint high = floor.Highest;
            var at = new FloorPoint(low.XMm + (draw.Next() * (high.XMm - low.XMm)), low.YMm + (draw.Next() * (high.YMm - low.YMm)));
            if (floor.ToWall(at) > 0)
            {
                places.AddRange([at.XMm, at.YMm]);
            }
        }

        return [.. places];
    }

    // A round floor has no side of its own: the wick that is farthest from the middle stands straight up.
    private static IReadOnlyList<FloorPoint> Turned(Floor floor, IReadOnlyList<FloorPoint> wicks)
    {
        if (floor is not RoundFloor)
        {
            return [.. wicks.OrderByDescending(w => Math.Round(w.YMm, 3)).ThenBy(w => Math.Round(w.XMm, 3))];
        }

        FloorPoint farthest = wicks.MaxBy(w => Math.Round(w.To(default), 6));
        double outermost = Math.Max(farthest.To(default), double.Epsilon);
        (double sin, double cos) = (farthest.XMm / outermost, farthest.YMm / outermost);
        return
        [
            .. wicks
                .Select(w => new FloorPoint((w.XMm * cos) - (w.YMm * sin), (w.XMm * sin) + (w.YMm * cos)))
                .OrderByDescending(w => Math.Round(w.YMm, 3))
                .ThenBy(w => Math.Round(w.XMm, 3)),
        ];
    }

    private static double[] Flat(IEnumerable<FloorPoint> wicks) => [.. wicks.SelectMany(w => new[] { w.XMm, w.YMm })];

    private static FloorPoint[] Points(double[] at) => [.. at.Chunk(2).Select(p => new FloorPoint(p[0], p[1]))];
}

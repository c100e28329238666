namespace Chandlery.Core.Making.Layouts;

/// <summary>Symmetric layouts: on a round floor evenly filled rings about the middle, on a rectangular one rows and columns.</summary>
public static class RingLayout
{
    // More wicks have more ways to be shared out than anyone wants to wait for.
    private const int MostWicks = 40;
    private const int MostRings = 4;
    private const double Rounding = 1e-6;

    /// <summary>The symmetric layout with the greatest free circle; null where the floor or the count has none.</summary>
    public static WickLayout? Best(Floor floor, int count) =>
        floor switch
        {
            RoundFloor round => BestRings(round, count),
            CorneredFloor { Corners.Count: 4 } sides when IsUpright(sides) => BestRows(sides, count),
            _ => null,
        };

    /// <summary>How many wicks stand on each ring, from the middle outwards; a wick in the middle is a ring of one.</summary>
    public static IReadOnlyList<int> Rings(WickLayout layout) =>
        [.. layout.Wicks.GroupBy(w => Math.Round(w.To(default), 3)).OrderBy(g => g.Key).Select(g => g.Count())];

    private static WickLayout? BestRings(RoundFloor floor, int count)
    {
        if (count > MostWicks)
        {
            return null;
        }

        IEnumerable<WickLayout> layouts =
            from middle in Enumerable.Range(0, 2)
            where count - middle != 1
            from rings in Shares(count - middle, 2, MostRings)
            let unit = Unit(middle == 1, rings)
            where unit is not null
            let outermost = unit.Max(w => w.To(default)) + 1
            let scale = floor.RadiusMm / outermost
            select WickLayout.Of(floor, [.. unit.Select(w => new FloorPoint(w.XMm * scale, w.YMm * scale))]);
        return layouts.OrderByDescending(l => Math.Round(l.FreeRadius.Value, 6)).ThenBy(l => Rings(l).Count).FirstOrDefault();
    }

    // Every ring as close to those inside it as circles of radius 1 allow, turned so that it stands on their gaps; null where that
    // cannot be done.
    private static List<FloorPoint>? Unit(bool middle, IReadOnlyList<int> rings)
    {
        var wicks = new List<FloorPoint>();
        if (middle)
        {
            wicks.Add(default);
        }

        double inner = middle ? 0 : -1;
        double turn = 0;
        int before = 1;
        foreach (int count in rings)
        {
            double own = 1 / Math.Sin(Math.PI / count);
            double radius = own;
            if (inner >= 0)
            {
                // Between a wick of this ring and the nearest of the ring inside, as seen from the middle.
                double angle = inner == 0 ? 0 : Math.PI / LeastCommonMultiple(before, count);
                double across = 4 - Math.Pow(inner * Math.Sin(angle), 2);
                radius = Math.Max(own, (inner * Math.Cos(angle)) + (across > 0 ? Math.Sqrt(across) : 0));
                turn += inner == 0 ? 0 : angle;
            }

            for (int i = 0; i < count; i++)
            {
                double at = turn + (2 * Math.PI * i / count);
                wicks.Add(new FloorPoint(radius * Math.Sin(at), radius * Math.Cos(at)));
            }

            inner = radius;
            before = count;
        }

        bool free = wicks.Select((w, i) => wicks.Take(i).All(other => w.To(other) > 2 * (1 - 1e-9))).All(ok => ok);
        return free ? wicks : null;
    }

    private static WickLayout? BestRows(CorneredFloor floor, int count)
    {
        double width = floor.Highest.XMm - floor.Lowest.XMm;
        double height = floor.Highest.YMm - floor.Lowest.YMm;
        return Enumerable
            .Range(1, count)
            .Where(columns => count % columns == 0)
            .Select(columns =>
            {
                int rows = count / columns;
                double radius = Math.Min(width / (2 * columns), height / (2 * rows));
                return WickLayout.Of(
                    floor,
                    [
                        .. from row in Enumerable.Range(0, rows)
                        from column in Enumerable.Range(0, columns)
                        select new FloorPoint(Even(column, columns, width, radius), Even(row, rows, height, radius)),
                    ]
                );
            })
            .MaxBy(l => Math.Round(l.FreeRadius.Value, 6));
    }

    // From wall to wall, the outermost as far from it as the free circle asks.
    private static double Even(int at, int of, double length, double radius) =>
        of == 1 ? length / 2 : radius + (at * (length - (2 * radius)) / (of - 1));

    private static bool IsUpright(CorneredFloor floor) =>
        Math.Abs(floor.AreaSquareMm - ((floor.Highest.XMm - floor.Lowest.XMm) * (floor.Highest.YMm - floor.Lowest.YMm))) < Rounding;

    // Ways to share wicks out over rings that never get fewer outwards.
    private static IEnumerable<IReadOnlyList<int>> Shares(int count, int least, int rings)
    {
        if (count == 0)
        {
            yield return [];
            yield break;
        }

        for (int first = least; first <= count && rings > 0; first++)
        {
            foreach (IReadOnlyList<int> rest in Shares(count - first, first, rings - 1))
            {
                yield return [first, .. rest];
            }
        }
    }

    private static int LeastCommonMultiple(int a, int b)
    {
        (int x, int y) = (a, b);
        while (y != 0)
        {
            (x, y) = (y, x % y);
        }

        return a / x * b;
    }
}

namespace Chandlery.Core.Making.Layouts;

/// <summary>
/// How much wicks crowd each other and the wall when a circle of a radius is asked for around each: the squares of all overlaps,
/// zero where every circle is free. Minimised by the method of limited memory (Nocedal, Math. Comp. 35, 1980).
/// </summary>
internal sealed class Crowding(Floor floor, double radius)
{
    private const int Remembered = 8;
    private const int MostSteps = 300;
    private const double Nothing = 1e-24;
    private const double FirstStep = 0.25;
    private const double Armijo = 1e-4;
    private const double ShortestStep = 1e-10;

    private readonly WallDistance[] walls = new WallDistance[floor.WallCount];

    /// <summary>Moves the places until they crowd as little as they can from there.</summary>
    /// <param name="places">X and Y of each in turn.</param>
    public double[] Relax(double[] places)
    {
        double[] at = [.. places];
        double[] slope = new double[at.Length];
        double crowding = Of(at, slope);
        var steps = new List<(double[] Step, double[] Change, double Product)>();
        for (int round = 0; round < MostSteps && crowding > Nothing; round++)
        {
            double[] way = Way(slope, steps);
            double fall = Product(way, slope);
            if (fall <= 0)
            {
                steps.Clear();
                way = [.. slope.Select(s => s * FirstStep)];
                fall = Product(way, slope);
            }

            double length = 1;
            double[] next = Moved(at, way, length);
            double[] nextSlope = new double[at.Length];
            double nextCrowding = Of(next, nextSlope);
            while (nextCrowding > crowding - (Armijo * length * fall) && length > ShortestStep)
            {
                length /= 2;
                next = Moved(at, way, length);
                nextCrowding = Of(next, nextSlope);
            }

            if (nextCrowding >= crowding)
            {
                break;
            }

            double[] step = Difference(next, at);
            double[] change = Difference(nextSlope, slope);
            double product = Product(step, change);
            if (product > 0)
            {
                steps.Add((step, change, product));
                if (steps.Count > Remembered)
                {
                    steps.RemoveAt(0);
                }
            }

            (at, slope, crowding) = (next, nextSlope, nextCrowding);
        }

        return at;
    }

    private double Of(double[] at, double[] slope)
    {
        Array.Clear(slope);
        double sum = 0;
        for (int i = 0; i < at.Length; i += 2)
        {
            for (int j = 0; j < i; j += 2)
            {
                double dx = at[i] - at[j];
                double dy = at[i + 1] - at[j + 1];
                double square = (dx * dx) + (dy * dy);
                if (square >= 4 * radius * radius)
                {
                    continue;
                }

                double distance = Math.Max(Math.Sqrt(square), double.Epsilon);
                double overlap = (2 * radius) - distance;
                sum += overlap * overlap;
                double pull = 2 * overlap / distance;
                slope[i] -= pull * dx;
                slope[i + 1] -= pull * dy;
                slope[j] += pull * dx;
                slope[j + 1] += pull * dy;
            }

            floor.Measure(new FloorPoint(at[i], at[i + 1]), walls);
            foreach (WallDistance wall in walls)
            {
                double overlap = radius - wall.Mm;
                if (overlap > 0)
                {
                    sum += overlap * overlap;
                    slope[i] -= 2 * overlap * wall.AwayX;
                    slope[i + 1] -= 2 * overlap * wall.AwayY;
                }
            }
        }

        return sum;
    }

    // The slope, bent by what the last steps taught of its curvature.
    private static double[] Way(double[] slope, List<(double[] Step, double[] Change, double Product)> steps)
    {
        double[] way = [.. slope];
        double[] weights = new double[steps.Count];
        for (int k = steps.Count - 1; k >= 0; k--)
        {
            weights[k] = Product(steps[k].Step, way) / steps[k].Product;
            Add(way, steps[k].Change, -weights[k]);
        }

        double scale = steps.Count > 0 ? steps[^1].Product / Product(steps[^1].Change, steps[^1].Change) : FirstStep;
        for (int i = 0; i < way.Length; i++)
        {
            way[i] *= scale;
        }

        for (int k = 0; k < steps.Count; k++)
        {
            Add(way, steps[k].Step, weights[k] - (Product(steps[k].Change, way) / steps[k].Product));
        }

        return way;
    }

    private static double[] Moved(double[] at, double[] way, double length)
    {
        double[] moved = [.. at];
        Add(moved, way, -length);
        return moved;
    }

    private static void Add(double[] to, double[] what, double times)
    {
        for (int i = 0; i < to.Length; i++)
        {
            to[i] += times * what[i];
        }
    }

    private static double[] Difference(double[] a, double[] b)
    {
        double[] difference = [.. a];
        Add(difference, b, -1);
        return difference;
    }

    private static double Product(double[] a, double[] b)
    {
        double sum = 0;
        for (int i = 0; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }
}

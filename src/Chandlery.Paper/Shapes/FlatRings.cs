using SkiaSharp;

namespace Chandlery.Paper.Shapes;

/// <summary>The closed lines of a path, curves as points close to each other.</summary>
internal static class FlatRings
{
    /// <summary>How far a side may stray from its curve, millimetres.</summary>
    public const double StrayMm = 0.02;

    private const double SameMm = 0.005;
    private const double ClosedMm = 0.05;

    /// <summary>The rings of a path without conics, in millimetres.</summary>
    /// <exception cref="FormatException">A line is not closed.</exception>
    public static IReadOnlyList<IReadOnlyList<(double X, double Y)>> Of(SKPath path)
    {
        var rings = new List<IReadOnlyList<(double X, double Y)>>();
        var ring = new List<(double X, double Y)>();
        bool isClosed = false;
        using SKPath.RawIterator steps = path.CreateRawIterator();
        var p = new SKPoint[4];
        for (SKPathVerb verb = steps.Next(p); verb != SKPathVerb.Done; verb = steps.Next(p))
        {
            switch (verb)
            {
                case SKPathVerb.Move:
                    End();
                    ring.Add((p[0].X, p[0].Y));
                    break;
                case SKPathVerb.Line:
                    Add(p[1].X, p[1].Y);
                    break;
                case SKPathVerb.Quad:
                    Curve(p[0], Between(p[0], p[1]), Between(p[2], p[1]), p[2]);
                    break;
                case SKPathVerb.Cubic:
                    Curve(p[0], p[1], p[2], p[3]);
                    break;
                default:
                    isClosed = true;
                    break;
            }
        }

        End();
        return rings;

        void Add(double x, double y)
        {
            if (Distance(ring[^1], (x, y)) > SameMm)
            {
                ring.Add((x, y));
            }
        }

        void Curve(SKPoint a, SKPoint b, SKPoint c, SKPoint d)
        {
            int count = Steps(a, b, c, d);
            for (int i = 1; i <= count; i++)
            {
                double t = (double)i / count;
                double u = 1 - t;
                Add(
                    (u * u * u * a.X) + (3 * u * u * t * b.X) + (3 * u * t * t * c.X) + (t * t * t * d.X),
                    (u * u * u * a.Y) + (3 * u * u * t * b.Y) + (3 * u * t * t * c.Y) + (t * t * t * d.Y)
                );
            }
        }

        void End()
        {
            if (ring.Count > 1)
            {
                double gap = Distance(ring[0], ring[^1]);
                if (!isClosed && gap > ClosedMm)
                {
                    throw new FormatException("its line is not closed");
                }

                if (gap <= ClosedMm)
                {
                    ring.RemoveAt(ring.Count - 1);
                }

                rings.Add([.. ring]);
            }

            ring.Clear();
            isClosed = false;
        }
    }

    // A curve strays from n chords by no more than its greatest second derivative over 8 n².
    private static int Steps(SKPoint a, SKPoint b, SKPoint c, SKPoint d)
    {
        double bend = Math.Max(Bend(a, b, c), Bend(b, c, d));
        return Math.Clamp((int)Math.Ceiling(Math.Sqrt(0.75 * bend / StrayMm)), 1, 1000);
    }

    private static double Bend(SKPoint a, SKPoint b, SKPoint c) => Distance((a.X + c.X, a.Y + c.Y), (2 * b.X, 2 * b.Y));

    private static SKPoint Between(SKPoint from, SKPoint to) => new(from.X + ((to.X - from.X) * 2 / 3), from.Y + ((to.Y - from.Y) * 2 / 3));

    private static double Distance((double X, double Y) a, (double X, double Y) b) =>
        Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));
}

namespace Chandlery.Paper.Proofs.Reading;

/// <summary>The box around a path while it is followed: around the curves themselves, not their handles.</summary>
internal sealed class PathBounds
{
    private (double X, double Y) pen;

    /// <summary>Least x.</summary>
    public double Left { get; private set; } = double.PositiveInfinity;

    /// <summary>Least y.</summary>
    public double Bottom { get; private set; } = double.PositiveInfinity;

    /// <summary>Greatest x.</summary>
    public double Right { get; private set; } = double.NegativeInfinity;

    /// <summary>Greatest y.</summary>
    public double Top { get; private set; } = double.NegativeInfinity;

    /// <summary>Goes to a point, straight or without drawing.</summary>
    public void To((double X, double Y) point)
    {
        Left = Math.Min(Left, point.X);
        Right = Math.Max(Right, point.X);
        Bottom = Math.Min(Bottom, point.Y);
        Top = Math.Max(Top, point.Y);
        pen = point;
    }

    /// <summary>Goes along a curve of the third degree.</summary>
    public void To((double X, double Y) first, (double X, double Y) second, (double X, double Y) end)
    {
        (double X, double Y) start = pen;
        foreach (double t in Turns(start.X, first.X, second.X, end.X).Concat(Turns(start.Y, first.Y, second.Y, end.Y)))
        {
            To((At(t, start.X, first.X, second.X, end.X), At(t, start.Y, first.Y, second.Y, end.Y)));
        }

        To(end);
    }

    private static double At(double t, double a, double b, double c, double d)
    {
        double s = 1 - t;
        return (s * s * s * a) + (3 * s * s * t * b) + (3 * s * t * t * c) + (t * t * t * d);
    }

    // Where a coordinate turns back: where its derivative, a parabola, is 0.
    private static IEnumerable<double> Turns(double a, double b, double c, double d)
    {
        double square = b - a - (2 * (c - b)) + (d - c);
        double linear = 2 * (c - b - (b - a));
        double constant = b - a;
        double root = Math.Sqrt(Math.Max(0, (linear * linear) - (4 * square * constant)));
        double[] all = Math.Abs(square) < 1e-12 ? [-constant / linear] : [(-linear + root) / (2 * square), (-linear - root) / (2 * square)];
        return all.Where(t => t is > 0 and < 1);
    }
}

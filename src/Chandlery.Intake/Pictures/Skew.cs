namespace Chandlery.Intake.Pictures;

/// <summary>Finds how far a page lay askew on the scanner.</summary>
internal static class Skew
{
    private const double MostDegrees = 2;
    private const double CoarseDegrees = 0.2;
    private const double FineDegrees = 0.04;
    private const int Step = 2;
    private const int MostPoints = 300_000;

    /// <summary>The angle by which it must be turned, clockwise, so that its lines are level: the one at which its ink lies in the fewest rows.</summary>
    /// <param name="picture">The page.</param>
    /// <param name="ink">Darker shades are ink.</param>
    public static double Of(GreyPicture picture, byte ink)
    {
        var points = new List<(int X, int Y)>();
        for (int y = 0; y < picture.Height; y += Step)
        {
            for (int x = 0; x < picture.Width; x += Step)
            {
                if (picture[x, y] < ink)
                {
                    points.Add((x, y));
                }
            }
        }

        if (points.Count == 0)
        {
            return 0;
        }

        int stride = (points.Count / MostPoints) + 1;
        List<(int X, int Y)> some = [.. points.Where((_, at) => at % stride == 0)];
        double coarse = Best(some, picture, -MostDegrees, MostDegrees, CoarseDegrees);
        return Best(some, picture, coarse - CoarseDegrees, coarse + CoarseDegrees, FineDegrees);
    }

    private static double Best(List<(int X, int Y)> points, GreyPicture picture, double from, double to, double step)
    {
        int count = (int)Math.Round((to - from) / step) + 1;
        return Enumerable
            .Range(0, count)
            .Select(i => from + (i * step))
            .OrderBy(Math.Abs)
            .MaxBy(degrees => Gathered(points, picture, degrees));
    }

    private static double Gathered(List<(int X, int Y)> points, GreyPicture picture, double degrees)
    {
        double rise = Math.Tan(degrees * Math.PI / 180);
        var rows = new int[picture.Height + (2 * picture.Width)];
        foreach ((int x, int y) in points)
        {
            rows[(int)Math.Floor((y + (x * rise)) / Step) + picture.Width]++;
        }

        return rows.Sum(r => (double)r * r);
    }
}

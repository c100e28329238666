namespace Chandlery.Paper.Designs.Ornaments;

/// <summary>An island in the sea of <see cref="Tideline"/>.</summary>
/// <param name="Part">The oil that it stands for.</param>
/// <param name="X">Middle, millimetres.</param>
/// <param name="Y">Middle, millimetres.</param>
/// <param name="Radius">Mean radius, millimetres.</param>
internal sealed record Island(BlendPart Part, double X, double Y, double Radius)
{
    private const int Points = 24;

    /// <summary>The outline of a ring, from the shore (1) towards the summit (0).</summary>
    public Pen Ring(double scale)
    {
        var seed = new Seed(Part.Name);
        double first = seed.Between(0, 2 * Math.PI);
        double second = seed.Between(0, 2 * Math.PI);
        double lean = seed.Between(-0.35, 0.35);

        // The summit stands a little aside, so that one slope is steeper.
        double aside = (1 - scale) * Radius * 0.18;
        var points = new (double, double)[Points];
        for (int i = 0; i < Points; i++)
        {
            double angle = 2 * Math.PI * i / Points;
            double radius = Radius * scale * (1 + (0.13 * Math.Cos((2 * angle) + first)) + (0.06 * scale * Math.Cos((3 * angle) + second)));
            double x = radius * Math.Cos(angle) * 1.12;
            double y = radius * Math.Sin(angle) * 0.92;
            points[i] = (
                X + (x * Math.Cos(lean)) - (y * Math.Sin(lean)) + (aside * Math.Cos(first)),
                Y + (x * Math.Sin(lean)) + (y * Math.Cos(lean)) + (aside * Math.Sin(first))
            );
        }

        return new Pen().Through(points, closed: true);
    }

    /// <summary>How much deeper the water is at a place because the island stands near, millimetres.</summary>
    public double Pushes(double x, double y)
    {
        double reach = Radius * 1.35;
        double dx = (x - X) / reach;
        double dy = (y - Y) / reach;
        return Radius * 1.05 * Math.Exp(-0.5 * ((dx * dx) + (dy * dy)));
    }
}

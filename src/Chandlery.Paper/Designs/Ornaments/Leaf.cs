using Chandlery.Core.Declared;

namespace Chandlery.Paper.Designs.Ornaments;

/// <summary>The leaves of <see cref="Leafwork"/>: an outline and its veins, a kind for each note.</summary>
internal static class Leaf
{
    private const double VeinsMeet = 0.3;

    // Of a leaf with five lobes: where each points, its length, and half its width.
    private static readonly IReadOnlyList<(double Degrees, double Length, double Half)> Lobes =
    [
        (-126, 0.46, 0.15),
        (-62, 0.62, 0.19),
        (0, 0.7, 0.19),
        (62, 0.62, 0.19),
        (126, 0.46, 0.15),
    ];

    /// <summary>The outline.</summary>
    public static Pen Outline(Scent note, Turtle t) =>
        note switch
        {
            Scent.Sea => Ribbon(t),
            Scent.Smoke or Scent.Wood => Oval(t, 0.14),
            Scent.Leaf => Fingers(t),
            Scent.Flower => Petals(t, 6),
            Scent.Spice => Petals(t, 8),
            Scent.Resin => Drop(t),
            Scent.Sweet => Heart(t),
            Scent.Clean => Oval(t, 0.1),
            _ => Blade(t),
        };

    /// <summary>The veins.</summary>
    public static Pen Veins(Scent note, Turtle t)
    {
        var pen = new Pen();
        switch (note)
        {
            case Scent.Smoke or Scent.Wood:
                Needles(pen, t);
                break;
            case Scent.Leaf:
                Fan(pen, t);
                break;
            case Scent.Flower or Scent.Spice:
                (double x, double y) = t.At(0.5, 0);
                pen.Circle(x, y, t.Length * 0.09);
                break;
            case Scent.Sea:
                Midrib(pen, t, 0.9, wave: 0.05);
                break;
            case Scent.Resin or Scent.Clean:
                Midrib(pen, t, 0.6, wave: 0);
                break;
            default:
                Midrib(pen, t, 0.92, wave: 0);
                for (int i = 0; i < 5; i++)
                {
                    double along = 0.22 + (0.145 * i);
                    Side(pen, t, along, 0.21 * Math.Sin(Math.PI * Math.Pow(along, 0.85)));
                }

                break;
        }

        return pen;
    }

    private static Pen Oval(Turtle t, double half)
    {
        (double x, double y) = t.At(0, 0);
        (double x1, double y1) = t.At(0.22, -half);
        (double x2, double y2) = t.At(0.7, -half);
        (double x3, double y3) = t.At(1, 0);
        (double x4, double y4) = t.At(0.7, half);
        (double x5, double y5) = t.At(0.22, half);
        return new Pen().Move(x, y).Curve(x1, y1, x2, y2, x3, y3).Curve(x4, y4, x5, y5, x, y).Close();
    }

    private static Pen Drop(Turtle t)
    {
        (double x, double y) = t.At(0, 0);
        (double x1, double y1) = t.At(0.5, -0.06);
        (double x2, double y2) = t.At(0.6, -0.42);
        (double x3, double y3) = t.At(0.98, 0);
        (double x4, double y4) = t.At(0.6, 0.42);
        (double x5, double y5) = t.At(0.5, 0.06);
        return new Pen().Move(x, y).Curve(x1, y1, x2, y2, x3, y3).Curve(x4, y4, x5, y5, x, y).Close();
    }

    private static Pen Heart(Turtle t)
    {
        (double x, double y) = t.At(0.1, 0);
        (double x1, double y1) = t.At(-0.12, -0.5);
        (double x2, double y2) = t.At(0.55, -0.5);
        (double x3, double y3) = t.At(1, 0);
        (double x4, double y4) = t.At(0.55, 0.5);
        (double x5, double y5) = t.At(-0.12, 0.5);
        return new Pen().Move(x, y).Curve(x1, y1, x2, y2, x3, y3).Curve(x4, y4, x5, y5, x, y).Close();
    }

    private static Pen Ribbon(Turtle t)
    {
        const int steps = 12;
        var upper = new List<(double, double)>();
        var lower = new List<(double, double)>();
        for (int i = 0; i <= steps; i++)
        {
            double along = (double)i / steps;
            double swell = Math.Sin(Math.PI * Math.Pow(along, 0.8));
            double bend = RibbonBend(along);
            upper.Add(t.At(along, bend - (swell * (0.08 + (0.022 * Math.Sin(along * 17))))));
            lower.Add(t.At(along, bend + (swell * (0.08 + (0.022 * Math.Sin((along * 17) + 2))))));
        }

        lower.Reverse();
        return new Pen().Through([.. upper, .. lower.Skip(1).Take(steps - 1)], closed: true);
    }

    private static double RibbonBend(double along) => 0.05 * Math.Sin(along * 2 * Math.PI);

    // Five fingers round the place where the veins meet: narrow bays between them, ends as round as thumbs.
    private static Pen Fingers(Turtle t)
    {
        var points = new List<(double, double)> { t.At(VeinsMeet - 0.1, 0) };
        for (int i = 0; i < Lobes.Count; i++)
        {
            (double degrees, double length, double half) = Lobes[i];
            points.Add(OnLobe(t, degrees, length * 0.45, -half * 0.8));
            points.Add(OnLobe(t, degrees, length * 0.76, -half));
            points.Add(OnLobe(t, degrees, length * 0.95, -half * 0.55));
            points.Add(OnLobe(t, degrees, length, 0));
            points.Add(OnLobe(t, degrees, length * 0.95, half * 0.55));
            points.Add(OnLobe(t, degrees, length * 0.76, half));
            points.Add(OnLobe(t, degrees, length * 0.45, half * 0.8));
            if (i + 1 < Lobes.Count)
            {
                points.Add(OnLobe(t, (degrees + Lobes[i + 1].Degrees) / 2, 0.22, 0));
            }
        }

        return new Pen().Through(points, closed: true);
    }

    private static (double X, double Y) OnLobe(Turtle t, double degrees, double along, double aside)
    {
        (double sin, double cos) = Math.SinCos(degrees * Math.PI / 180);
        return t.At(VeinsMeet + (along * cos) - (aside * sin), (along * sin) + (aside * cos));
    }

    private static Pen Petals(Turtle t, int petals)
    {
        var points = new List<(double, double)>();
        for (int i = 0; i < petals * 6; i++)
        {
            double angle = 2 * Math.PI * i / (petals * 6);
            double r = 0.5 * (0.62 + (0.38 * Math.Abs(Math.Cos(petals * angle / 2))));
            points.Add(t.At(0.5 + (r * Math.Cos(angle)), r * Math.Sin(angle)));
        }

        return new Pen().Through(points, closed: true);
    }

    private static void Midrib(Pen pen, Turtle t, double to, double wave)
    {
        var points = new List<(double, double)>();
        for (int i = 0; i <= 6; i++)
        {
            double along = to * i / 6;
            points.Add(t.At(along, wave == 0 ? 0 : RibbonBend(along)));
        }

        pen.Through(points);
    }

    private static void Side(Pen pen, Turtle t, double along, double reach)
    {
        foreach (int side in new[] { -1, 1 })
        {
            (double x, double y) = t.At(along - 0.08, 0);
            (double x1, double y1) = t.At(along + 0.02, side * reach * 0.5);
            (double x2, double y2) = t.At(along + 0.07, side * reach);
            pen.Move(x, y).Curve(x1, y1, x1, y1, x2, y2);
        }
    }

    private static void Needles(Pen pen, Turtle t)
    {
        const int pairs = 13;
        Midrib(pen, t, 1, wave: 0);
        for (int i = 1; i <= pairs; i++)
        {
            double along = (double)i / pairs;
            double reach = 0.05 + (0.13 * Math.Sin(Math.PI * Math.Pow(along, 0.8)));
            foreach (int side in new[] { -1, 1 })
            {
                (double x, double y) = t.At(along - 0.07, 0);
                (double x1, double y1) = t.At(along + 0.08, side * reach);
                pen.Move(x, y).Line(x1, y1);
            }
        }
    }

    // From the stalk to the end of each lobe, with short veins to both sides.
    private static void Fan(Pen pen, Turtle t)
    {
        (double x, double y) = t.At(0, 0);
        (double mx, double my) = t.At(VeinsMeet, 0);
        pen.Move(x, y).Line(mx, my);
        foreach ((double degrees, double length, double half) in Lobes)
        {
            (double ex, double ey) = OnLobe(t, degrees, length * 0.9, 0);
            pen.Move(mx, my).Line(ex, ey);
            foreach (double along in new[] { 0.42, 0.62 })
            {
                foreach (int side in new[] { -1, 1 })
                {
                    (double fx, double fy) = OnLobe(t, degrees, length * along, 0);
                    (double cx, double cy) = OnLobe(t, degrees, length * (along + 0.12), side * half * 0.3);
                    (double tx, double ty) = OnLobe(t, degrees, length * (along + 0.17), side * half * 0.72);
                    pen.Move(fx, fy).Curve(cx, cy, cx, cy, tx, ty);
                }
            }
        }
    }

    // Broad near the stalk, drawn out to a tip that bends a little.
    private static Pen Blade(Turtle t)
    {
        (double x, double y) = t.At(0, 0);
        (double x1, double y1) = t.At(0.1, -0.34);
        (double x2, double y2) = t.At(0.66, -0.4);
        (double x3, double y3) = t.At(1, 0.03);
        (double x4, double y4) = t.At(0.72, 0.3);
        (double x5, double y5) = t.At(0.16, 0.42);
        return new Pen().Move(x, y).Curve(x1, y1, x2, y2, x3, y3).Curve(x4, y4, x5, y5, x, y).Close();
    }
}

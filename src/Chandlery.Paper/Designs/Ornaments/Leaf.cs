using Chandlery.Core.Declared;

namespace Chandlery.Paper.Designs.Ornaments;

/// <summary>The leaves of <see cref="Leafwork"/>: an outline and its veins, a kind for each note.</summary>
internal static class Leaf
{
    private const int SmoothPoints = 26;

    /// <summary>The outline.</summary>
    public static Pen Outline(Scent note, Turtle t) =>
        note switch
        {
            Scent.Sea => Ribbon(t),
            Scent.Smoke or Scent.Wood => Oval(t, 0.13),
            Scent.Leaf => Lobed(t, 5, 0.46),
            Scent.Flower => Petals(t, 6),
            Scent.Spice => Petals(t, 8),
            Scent.Resin => Drop(t),
            Scent.Sweet => Heart(t),
            Scent.Clean => Oval(t, 0.1),
            _ => Oval(t, 0.3),
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
                for (int i = 1; i <= 4; i++)
                {
                    Side(pen, t, 0.16 + (0.17 * i), 0.17 * Math.Sin(Math.PI * (0.16 + (0.17 * i))));
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
        var upper = new List<(double, double)>();
        var lower = new List<(double, double)>();
        for (int i = 0; i <= 8; i++)
        {
            double along = i / 8.0;
            double half = 0.1 * Math.Sin(Math.PI * Math.Pow(along, 0.75)) * (1 + (0.2 * Math.Sin(along * 19)));
            double bend = 0.07 * Math.Sin(along * 2 * Math.PI);
            upper.Add(t.At(along, bend - half));
            lower.Add(t.At(along, bend + half));
        }

        lower.Reverse();
        return new Pen().Through([.. upper, .. lower.Skip(1).Take(7)], closed: true);
    }

    private static Pen Lobed(Turtle t, int lobes, double radius)
    {
        var points = new List<(double, double)>();
        for (int i = 0; i < SmoothPoints * 2; i++)
        {
            double angle = 2 * Math.PI * i / (SmoothPoints * 2);

            // A notch at the stalk, and shallower ones between lobes.
            double fromStalk = Math.Abs(angle - Math.PI);
            double notch = 1 - (0.6 * Math.Exp(-fromStalk * fromStalk * 9));
            double r = radius * (0.74 + (0.26 * Math.Cos(lobes * angle)) + (0.06 * Math.Cos(2 * lobes * angle))) * notch;
            points.Add(t.At(0.5 + (r * Math.Cos(angle)), r * Math.Sin(angle)));
        }

        return new Pen().Through(points, closed: true);
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
            points.Add(t.At(along, wave == 0 ? 0 : 0.07 * Math.Sin(along * 2 * Math.PI)));
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
        const int pairs = 11;
        Midrib(pen, t, 1, wave: 0);
        for (int i = 1; i < pairs; i++)
        {
            double along = (double)i / pairs;
            double reach = 0.17 * Math.Sin(Math.PI * Math.Pow(along, 0.8)) + 0.04;
            foreach (int side in new[] { -1, 1 })
            {
                (double x, double y) = t.At(along - 0.05, 0);
                (double x1, double y1) = t.At(along + 0.07, side * reach);
                pen.Move(x, y).Line(x1, y1);
            }
        }
    }

    private static void Fan(Pen pen, Turtle t)
    {
        (double x, double y) = t.At(0.14, 0);
        for (int i = -2; i <= 2; i++)
        {
            double angle = i * 2 * Math.PI / 5;
            (double x1, double y1) = t.At(0.5 + (0.34 * Math.Cos(angle)), 0.34 * Math.Sin(angle));
            (double mx, double my) = t.At(0.42, 0.1 * i);
            pen.Move(x, y).Curve(mx, my, mx, my, x1, y1);
        }
    }
}

using System.Globalization;
using System.Text;

namespace Chandlery.Paper.Designs;

/// <summary>Writes SVG path data in millimetres.</summary>
internal sealed class Pen
{
    private readonly StringBuilder path = new();

    /// <summary>What was written.</summary>
    public override string ToString() => path.ToString();

    /// <summary>Begins a figure.</summary>
    public Pen Move(double x, double y) => Write("M", x, y);

    /// <summary>A straight line.</summary>
    public Pen Line(double x, double y) => Write("L", x, y);

    /// <summary>A curve with two handles.</summary>
    public Pen Curve(double x1, double y1, double x2, double y2, double x, double y) =>
        Write("C", x1, y1).Write(" ", x2, y2).Write(" ", x, y);

    /// <summary>Closes the figure.</summary>
    public Pen Close()
    {
        path.Append('Z');
        return this;
    }

    /// <summary>A circle.</summary>
    public Pen Circle(double x, double y, double radius)
    {
        // A quarter of a circle strays from such a curve by less than 0.03 % of the radius.
        const double towards = 0.5522847498;
        double h = radius * towards;
        return Move(x + radius, y)
            .Curve(x + radius, y + h, x + h, y + radius, x, y + radius)
            .Curve(x - h, y + radius, x - radius, y + h, x - radius, y)
            .Curve(x - radius, y - h, x - h, y - radius, x, y - radius)
            .Curve(x + h, y - radius, x + radius, y - h, x + radius, y)
            .Close();
    }

    /// <summary>A box.</summary>
    public Pen Box(double x, double y, double width, double height) =>
        Move(x, y).Line(x + width, y).Line(x + width, y + height).Line(x, y + height).Close();

    /// <summary>A smooth line through points: each piece leaves a point towards the one after the next.</summary>
    public Pen Through(IReadOnlyList<(double X, double Y)> points, bool closed = false)
    {
        int count = points.Count;
        Move(points[0].X, points[0].Y);
        for (int i = 0; i < (closed ? count : count - 1); i++)
        {
            (double X, double Y) before = At(i - 1);
            (double X, double Y) from = At(i);
            (double X, double Y) to = At(i + 1);
            (double X, double Y) after = At(i + 2);
            Curve(
                from.X + ((to.X - before.X) / 6),
                from.Y + ((to.Y - before.Y) / 6),
                to.X - ((after.X - from.X) / 6),
                to.Y - ((after.Y - from.Y) / 6),
                to.X,
                to.Y
            );
        }

        return closed ? Close() : this;

        (double X, double Y) At(int i) => closed ? points[(i + count) % count] : points[Math.Clamp(i, 0, count - 1)];
    }

    private Pen Write(string command, double x, double y)
    {
        path.Append(command)
            .Append(Math.Round(x, 2).ToString("0.##", CultureInfo.InvariantCulture))
            .Append(' ')
            .Append(Math.Round(y, 2).ToString("0.##", CultureInfo.InvariantCulture));
        return this;
    }
}

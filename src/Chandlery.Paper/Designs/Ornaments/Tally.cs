namespace Chandlery.Paper.Designs.Ornaments;

/// <summary>Strokes that count, every fifth across the four before it.</summary>
internal static class Tally
{
    /// <summary>The strokes, ending at a right edge.</summary>
    /// <param name="count">How many.</param>
    /// <param name="right">Right edge, millimetres.</param>
    /// <param name="baseline">Lower end.</param>
    /// <param name="height">Height.</param>
    public static Pen Draw(int count, double right, double baseline, double height)
    {
        double step = height * 0.3;
        int groups = (count - 1) / 5;
        double width = ((count - groups - 1) * step) + (groups * step * 0.8);
        double x = right - Math.Max(0, width);
        var pen = new Pen();
        double groupStart = x;
        for (int i = 1; i <= count; i++)
        {
            if (i % 5 == 0)
            {
                pen.Move(groupStart - (step * 0.5), baseline - (height * 0.2)).Line(x - step + (step * 0.5), baseline - (height * 0.8));
                x += step * 0.8;
                groupStart = x;
                continue;
            }

            pen.Move(x, baseline).Line(x, baseline - height);
            x += step;
        }

        return pen;
    }
}

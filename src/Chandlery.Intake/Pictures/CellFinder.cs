namespace Chandlery.Intake.Pictures;

/// <summary>Finds the cells of ruled tables: stretches of paper that lines close in on all sides.</summary>
internal static class CellFinder
{
    private const double StepMm = 0.4;
    private const double OpenCornerMm = 0.8;
    private const double NarrowestMm = 3;
    private const double LowestMm = 2.4;
    private const double LeastFilled = 0.92;
    private const int Fewest = 4;

    /// <summary>The cells; none where too few are closed in to be a table.</summary>
    /// <param name="lines">Ruled lines.</param>
    /// <param name="width">The picture's width.</param>
    /// <param name="height">The picture's height.</param>
    /// <param name="pixelsPerMm">Its resolution.</param>
    public static IReadOnlyList<PixelBox> Of(RulingLines lines, int width, int height, double pixelsPerMm)
    {
        int step = Math.Max(1, (int)(StepMm * pixelsPerMm));
        int reach = (int)Math.Ceiling(OpenCornerMm * pixelsPerMm);
        int columns = (width / step) + 1;
        int rows = (height / step) + 1;
        var taken = new bool[columns * rows];
        void Wall(PixelBox line)
        {
            for (int y = Math.Max(0, line.Top / step); y <= Math.Min(rows - 1, (line.Bottom - 1) / step); y++)
            {
                for (int x = Math.Max(0, line.Left / step); x <= Math.Min(columns - 1, (line.Right - 1) / step); x++)
                {
                    taken[(y * columns) + x] = true;
                }
            }
        }

        foreach (PixelBox line in lines.Level)
        {
            Wall(line with { Left = line.Left - reach, Right = line.Right + reach });
        }

        foreach (PixelBox line in lines.Upright)
        {
            Wall(line with { Top = line.Top - reach, Bottom = line.Bottom + reach });
        }

        var cells = new List<PixelBox>();
        for (int at = 0; at < taken.Length; at++)
        {
            if (!taken[at] && Fill(taken, columns, rows, at) is { } box && IsCell(box, step, pixelsPerMm))
            {
                cells.Add(new PixelBox(box.Left * step, box.Top * step, box.Right * step, box.Bottom * step));
            }
        }

        return cells.Count < Fewest ? [] : cells;
    }

    private static bool IsCell(PixelBox box, int step, double pixelsPerMm) =>
        box.Width * step >= NarrowestMm * pixelsPerMm && box.Height * step >= LowestMm * pixelsPerMm;

    // Everything that can be reached without crossing a line; null when that is no rectangle or goes on to the page's edge.
    private static PixelBox? Fill(bool[] taken, int columns, int rows, int start)
    {
        var open = new Stack<int>();
        open.Push(start);
        taken[start] = true;
        int count = 0;
        (int left, int top, int right, int bottom) = (columns, rows, 0, 0);
        while (open.TryPop(out int at))
        {
            count++;
            int x = at % columns;
            int y = at / columns;
            (left, top) = (Math.Min(left, x), Math.Min(top, y));
            (right, bottom) = (Math.Max(right, x + 1), Math.Max(bottom, y + 1));
            foreach ((int nextX, int nextY) in new[] { (x - 1, y), (x + 1, y), (x, y - 1), (x, y + 1) })
            {
                int next = (nextY * columns) + nextX;
                if (nextX >= 0 && nextY >= 0 && nextX < columns && nextY < rows && !taken[next])
                {
                    taken[next] = true;
                    open.Push(next);
                }
            }
        }

        var box = new PixelBox(left, top, right, bottom);
        bool isOpen = left == 0 || top == 0 || right == columns || bottom == rows;
        return isOpen || count < LeastFilled * box.Width * box.Height ? null : box;
    }
}

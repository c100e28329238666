namespace Chandlery.Paper.Designs.Ornaments;

/// <summary>Outlines of where a field is at least as high as a level (marching squares).</summary>
internal static class Contours
{
    /// <summary>The outlines; null where the field is nowhere so high.</summary>
    /// <param name="field">The field.</param>
    /// <param name="level">The level.</param>
    /// <param name="grid">Cells from edge to edge.</param>
    /// <param name="reach">The field is looked at from minus this to this, in both directions.</param>
    /// <param name="place">Where a place of the field lies on the page, millimetres.</param>
    public static Pen? Of(
        Func<double, double, double> field,
        double level,
        int grid,
        double reach,
        Func<double, double, (double X, double Y)> place
    )
    {
        double At(int i) => reach * ((2.0 * i / grid) - 1);

        // Beyond the edge the field counts as low, so that every outline closes.
        var values = new double[grid + 1, grid + 1];
        for (int i = 1; i < grid; i++)
        {
            for (int j = 1; j < grid; j++)
            {
                values[i, j] = field(At(i), At(j));
            }
        }

        // Each crossing of a cell's edge leads to the next one; the high ground lies on the left.
        var next = new Dictionary<(int, int, bool), (int, int, bool)>();
        for (int i = 0; i < grid; i++)
        {
            for (int j = 0; j < grid; j++)
            {
                Cross(i, j);
            }
        }

        if (next.Count == 0)
        {
            return null;
        }

        var pen = new Pen();
        while (next.Count > 0)
        {
            (int, int, bool) start = next.Keys.First();
            var points = new List<(double, double)>();
            for ((int, int, bool) at = start; next.Remove(at, out (int, int, bool) to); at = to)
            {
                points.Add(Point(at));
            }

            if (points.Count > 3)
            {
                pen.Through([.. points.Where((_, k) => k % 3 == 0)], closed: true);
            }
        }

        return pen;

        bool High(int i, int j) => values[i, j] >= level;

        void Cross(int i, int j)
        {
            (int, int, bool) upper = (i, j, true);
            (int, int, bool) lower = (i, j + 1, true);
            (int, int, bool) left = (i, j, false);
            (int, int, bool) right = (i + 1, j, false);
            int corners = (High(i, j) ? 1 : 0) | (High(i + 1, j) ? 2 : 0) | (High(i + 1, j + 1) ? 4 : 0) | (High(i, j + 1) ? 8 : 0);
            switch (corners)
            {
                case 1:
                    next[upper] = left;
                    break;
                case 2:
                    next[right] = upper;
                    break;
                case 3:
                    next[right] = left;
                    break;
                case 4:
                    next[lower] = right;
                    break;
                case 5:
                    next[upper] = left;
                    next[lower] = right;
                    break;
                case 6:
                    next[lower] = upper;
                    break;
                case 7:
                    next[lower] = left;
                    break;
                case 8:
                    next[left] = lower;
                    break;
                case 9:
                    next[upper] = lower;
                    break;
                case 10:
                    next[right] = upper;
                    next[left] = lower;
                    break;
                case 11:
                    next[right] = lower;
                    break;
                case 12:
                    next[left] = right;
                    break;
                case 13:
                    next[upper] = right;
                    break;
                case 14:
                    next[left] = upper;
                    break;
            }
        }

        (double X, double Y) Point((int I, int J, bool IsAcross) edge)
        {
            double from = values[edge.I, edge.J];
            double to = edge.IsAcross ? values[edge.I + 1, edge.J] : values[edge.I, edge.J + 1];
            double way = (level - from) / (to - from);
            return edge.IsAcross
                ? place(At(edge.I) + (2 * reach / grid * way), At(edge.J))
                : place(At(edge.I), At(edge.J) + (2 * reach / grid * way));
        }
    }
}

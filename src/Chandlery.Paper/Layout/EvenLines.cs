namespace Chandlery.Paper.Layout;

/// <summary>
/// Breaks a whole paragraph at once: of all ways to set it in as few lines as possible, the one whose lines differ least from the
/// full width. The last line may be as short as it likes, but not a word that was left over.
/// </summary>
internal static class EvenLines
{
    private const double Impossible = double.PositiveInfinity;
    private const double ToleranceMm = 1e-6;

    // A broken word is as bad as a line that leaves a quarter of its width free.
    private const double BrokenWord = 0.06;

    // A last line below this part of the width looks left over; one of hardly anything is as bad as a line that is half empty.
    private const double LeftOver = 0.33;
    private const double LeftOverCost = 0.25;

    /// <summary>How many pieces each line gets; null when they do not fit into so many lines.</summary>
    /// <param name="pieces">The paragraph.</param>
    /// <param name="widthsMm">Width of each line; as many as the fewest lines that hold the paragraph.</param>
    /// <param name="sizeMm">Type size.</param>
    public static int[]? Break(List<Piece> pieces, IReadOnlyList<double> widthsMm, double sizeMm)
    {
        int lines = widthsMm.Count;
        int count = pieces.Count;
        int[] earliest = Earliest(pieces, widthsMm, sizeMm);

        // Row l, place i: least cost of setting the first i pieces in l lines, and where the last of these lines begins.
        int row = count + 1;
        var cost = new double[(lines + 1) * row];
        var from = new int[cost.Length];
        Array.Fill(cost, Impossible);
        cost[0] = 0;
        for (int l = 1; l <= lines; l++)
        {
            double width = widthsMm[l - 1];
            int above = (l - 1) * row;
            int here = l * row;
            for (int start = earliest[l - 1]; start < count; start++)
            {
                if (double.IsInfinity(cost[above + start]))
                {
                    continue;
                }

                double used = 0;
                for (int end = start + 1; end <= count; end++)
                {
                    Piece piece = pieces[end - 1];
                    used += ((end - 1 > start ? piece.BlankEm : 0) + piece.WidthEm) * sizeMm;
                    if (used > width)
                    {
                        break;
                    }

                    if (end < count && !LineBreaker.MayEnd(pieces[end], used, width, sizeMm))
                    {
                        continue;
                    }

                    double uneven = end == count && l == lines ? LastLine(used / width) : Squared((width - used) / width);
                    double total = cost[above + start] + uneven + (end < count && pieces[end].IsSoft ? BrokenWord : 0);
                    if (total < cost[here + end])
                    {
                        cost[here + end] = total;
                        from[here + end] = start;
                    }
                }
            }
        }

        if (double.IsInfinity(cost[(lines * row) + count]))
        {
            return null;
        }

        var result = new int[lines];
        for (int l = lines, end = count; l > 0; l--)
        {
            int start = from[(l * row) + end];
            result[l - 1] = end - start;
            end = start;
        }

        return result;
    }

    // Where each line may begin at the earliest: what stands from there on must find room in the lines that are left. Filled from the
    // end, with a little room for what is added up in another order; ways that begin a line earlier come to nothing.
    private static int[] Earliest(List<Piece> pieces, IReadOnlyList<double> widthsMm, double sizeMm)
    {
        var earliest = new int[widthsMm.Count];
        int at = pieces.Count;
        for (int l = widthsMm.Count - 1; l >= 0; l--)
        {
            double used = 0;
            for (; at > 0; at--)
            {
                Piece piece = pieces[at - 1];
                used += piece.WidthEm * sizeMm;
                if (used > widthsMm[l] + ToleranceMm)
                {
                    break;
                }

                used += piece.BlankEm * sizeMm;
            }

            earliest[l] = at;
        }

        return earliest;
    }

    private static double LastLine(double filled) => filled >= LeftOver ? 0 : Squared((LeftOver - filled) / LeftOver) * LeftOverCost;

    private static double Squared(double value) => value * value;
}

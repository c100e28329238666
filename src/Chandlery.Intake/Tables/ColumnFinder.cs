using Chandlery.Intake.Pages;

namespace Chandlery.Intake.Tables;

/// <summary>Finds where columns part: at upright ruled lines where there are any, else where no word of any row stands.</summary>
internal static class ColumnFinder
{
    private const double StepMm = 0.1;
    private const double NarrowestGapMm = 0.9;
    private const double SameRuleMm = 1;

    /// <summary>Places of upright ruled lines that run along most of the table, millimetres from the left; empty when there are none.</summary>
    /// <param name="lines">All lines of the table, headings too.</param>
    /// <param name="rules">Ruled lines on the table's pages.</param>
    public static IReadOnlyList<double> Ruled(IReadOnlyList<TextLine> lines, IReadOnlyList<RuledLine> rules) =>
        Upright(
            rules,
            lines.Min(l => l.Box.Left),
            lines.Max(l => l.Box.Right),
            lines.GroupBy(l => l.Page).Sum(p => p.Max(l => l.Box.Bottom) - p.Min(l => l.Box.Top))
        );

    /// <summary>The middles of the gaps where no word of any line stands, millimetres from the left.</summary>
    public static IReadOnlyList<double> Gaps(IReadOnlyList<TextLine> lines) =>
        Gaps(lines, lines.Min(l => l.Box.Left), lines.Max(l => l.Box.Right));

    // Upright lines inside the table that together run along most of its height on a page.
    private static List<double> Upright(IReadOnlyList<RuledLine> rules, double left, double right, double height)
    {
        var groups = new List<(double X, double Length)>();
        foreach (
            RuledLine rule in rules.Where(r => !r.IsLevel && r.Box.CentreX > left && r.Box.CentreX < right).OrderBy(r => r.Box.CentreX)
        )
        {
            if (groups.Count > 0 && rule.Box.CentreX - groups[^1].X < SameRuleMm)
            {
                groups[^1] = (groups[^1].X, groups[^1].Length + rule.Box.Height);
            }
            else
            {
                groups.Add((rule.Box.CentreX, rule.Box.Height));
            }
        }

        return [.. groups.Where(g => g.Length > 0.5 * height).Select(g => g.X)];
    }

    private static List<double> Gaps(IReadOnlyList<TextLine> lines, double left, double right)
    {
        var covered = new int[(int)Math.Ceiling((right - left) / StepMm) + 1];
        foreach (Box box in lines.SelectMany(l => l.Words).Select(w => w.Box))
        {
            for (int i = Index(box.Left, left); i <= Index(box.Right, left) && i < covered.Length; i++)
            {
                covered[Math.Max(0, i)]++;
            }
        }

        var gaps = new List<double>();
        int start = -1;
        for (int i = 0; i < covered.Length; i++)
        {
            if (covered[i] > 0)
            {
                if (start >= 0 && (i - start) * StepMm >= NarrowestGapMm)
                {
                    gaps.Add(left + ((start + i) / 2.0 * StepMm));
                }

                start = -1;
            }
            else if (start < 0)
            {
                start = i;
            }
        }

        return gaps;
    }

    private static int Index(double x, double left) => (int)Math.Floor((x - left) / StepMm);
}

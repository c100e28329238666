using Chandlery.Intake.Pages;

namespace Chandlery.Intake.Tables;

/// <summary>Finds where columns part: at upright ruled lines where there are any, else where the fewest words of any row stand.</summary>
internal static class ColumnFinder
{
    private const double StepMm = 0.1;
    private const double NarrowestGapMm = 0.9;
    private const double SameRuleMm = 1;
    private const double BlankOfTypeSize = 0.6;
    private const double CostOfBlank = 0.5;
    private const double CostOfHeading = 20;
    private const double MostCrossing = 0.3;
    private const double MostCrossingOfGaps = 0.06;

    /// <summary>Places of upright ruled lines that run along most of the table, millimetres from the left; empty when there are none.</summary>
    /// <param name="lines">All lines of the table, headings too.</param>
    /// <param name="rules">Ruled lines on the table's pages.</param>
    public static IReadOnlyList<double> Ruled(IReadOnlyList<TextLine> lines, IReadOnlyList<RuledLine> rules) =>
        Upright(
            rules,
            lines.Min(l => l.Frame.Left),
            lines.Max(l => l.Frame.Right),
            lines.GroupBy(l => (l.Page, l.ShiftMm)).Sum(p => p.Max(l => l.Frame.Bottom) - p.Min(l => l.Frame.Top))
        );

    /// <summary>The gaps where hardly any line of several phrases has a word, millimetres from the left.</summary>
    public static IReadOnlyList<(double From, double To)> Gaps(IReadOnlyList<TextLine> lines)
    {
        List<TextLine> rows = [.. lines.Where(l => l.Phrases().Count > 1)];
        return GapsOfAll(rows.Count < 2 ? lines : rows);
    }

    /// <summary>The gaps where hardly any of the lines has a word, whether it has several phrases or one, millimetres from the left.</summary>
    public static IReadOnlyList<(double From, double To)> GapsOfAll(IReadOnlyList<TextLine> rows)
    {
        double left = rows.Min(l => l.Frame.Left);
        double right = rows.Max(l => l.Frame.Right);
        var covered = new int[(int)Math.Ceiling((right - left) / StepMm) + 1];
        foreach (Box box in rows.SelectMany(l => l.Words).Select(w => w.Box))
        {
            for (int i = Index(box.Left, left); i <= Index(box.Right, left) && i < covered.Length; i++)
            {
                covered[Math.Max(0, i)]++;
            }
        }

        return
        [
            .. Runs(covered, rows.Count * MostCrossingOfGaps, NarrowestGapMm)
                .Select(r => (left + (r.From * StepMm), left + ((r.To + 1) * StepMm))),
        ];
    }

    /// <summary>Where each heading's column parts from the next one's; NaN where nothing parts them, so that they share a column.</summary>
    /// <param name="headings">Headings from left to right.</param>
    /// <param name="body">Lines of the body.</param>
    /// <param name="ruled">Upright ruled lines.</param>
    public static IReadOnlyList<double> Between(IReadOnlyList<TextLine> headings, IReadOnlyList<TextLine> body, IReadOnlyList<double> ruled)
    {
        var cuts = new List<double>();
        for (int i = 0; i + 1 < headings.Count; i++)
        {
            List<Box> own = [Before(headings[i].Frame, headings[i + 1].Frame), headings[i + 1].Frame];
            double from = own[0].CentreX;
            double to = own[1].CentreX;
            List<double> between = [.. ruled.Where(r => r > from && r < to)];
            cuts.Add(between.Count > 0 ? between[^1] : Cheapest(from, to, own, body));
        }

        return cuts;
    }

    // A heading too long for its column runs over the next one: where its column ends is for the rows to say.
    private static Box Before(Box heading, Box next) =>
        heading.Right > next.Left && heading.Left < next.Left - StepMm ? heading with { Right = (heading.Left + next.Left) / 2 } : heading;

    private static double Cheapest(double from, double to, IReadOnlyList<Box> headings, IReadOnlyList<TextLine> body)
    {
        int steps = Math.Max(1, (int)((to - from) / StepMm));
        var cost = new double[steps + 1];
        void Add(double left, double right, double amount)
        {
            for (int i = Math.Max(0, Index(left, from)); i <= Index(right, from) && i <= steps; i++)
            {
                cost[i] += amount;
            }
        }

        foreach (Box heading in headings)
        {
            Add(heading.Left, heading.Right, CostOfHeading);
        }

        foreach (TextLine line in body)
        {
            for (int w = 0; w < line.Words.Count; w++)
            {
                Word word = line.Words[w];
                Add(word.Box.Left, word.Box.Right, 1);
                if (w > 0 && word.Box.Left - line.Words[w - 1].Box.Right < BlankOfTypeSize * word.TypeSize)
                {
                    Add(line.Words[w - 1].Box.Right + StepMm, word.Box.Left - StepMm, CostOfBlank);
                }
            }
        }

        double least = cost.Min();
        if (least > Math.Max(1, MostCrossing * body.Count))
        {
            return double.NaN;
        }

        (int first, int last) = Runs([.. cost.Select(c => c <= least ? 0 : 1)], 0, 0).MaxBy(r => r.To - r.From);
        return from + ((first + last) / 2.0 * StepMm);
    }

    // Stretches where not more than so many words stand, between stretches where more do.
    private static IEnumerable<(int From, int To)> Runs(int[] covered, double most, double narrowestMm)
    {
        int start = -1;
        for (int i = 0; i <= covered.Length; i++)
        {
            bool free = i < covered.Length && covered[i] <= most;
            if (free && start < 0)
            {
                start = i;
            }
            else if (!free && start >= 0)
            {
                if ((i - start) * StepMm >= narrowestMm)
                {
                    yield return (start, i - 1);
                }

                start = -1;
            }
        }
    }

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

    private static int Index(double x, double left) => (int)Math.Floor((x - left) / StepMm);
}

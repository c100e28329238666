using Chandlery.Intake.Pages;

namespace Chandlery.Intake.Tables;

/// <summary>
/// Which lines of a table that stands on its side go with which heading. Headings and cells may begin at one height or have one middle, so
/// that a cell begins above its heading: a level rule between two headings parts their bands, else a gap clearly wider than the others
/// between them, else the lower heading's own line.
/// </summary>
internal sealed class HeadedBands
{
    private const double ClearlyWider = 1.2;
    private const double WidestPitch = 1.75;
    private readonly IReadOnlyList<TextLine> lines;
    private readonly List<int> heads;
    private readonly List<RuledLine> level;
    private readonly double edge;
    private readonly bool isRuled;

    /// <summary>The bands of these lines.</summary>
    /// <param name="lines">Lines from top to bottom, over all pages.</param>
    /// <param name="heads">Which of them begin with a heading.</param>
    /// <param name="rules">Ruled lines.</param>
    /// <param name="edge">Where the column of headings ends, millimetres from the left.</param>
    public HeadedBands(IReadOnlyList<TextLine> lines, List<int> heads, IReadOnlyList<RuledLine> rules, double edge)
    {
        this.lines = lines;
        this.heads = heads;
        this.edge = edge;
        level = [.. rules.Where(r => r.IsLevel && r.Box.Left < edge)];
        isRuled =
            heads.Count > 0
            && heads.Select(h => Band(lines[h])).Distinct().Count() == heads.Count
            && lines.Take(heads[^1] + 1).All(l => l.Page == lines[0].Page);
        Tops = [.. Enumerable.Range(0, heads.Count).Select(k => k == 0 ? FirstTop() : Top(heads[k - 1], heads[k]))];
    }

    /// <summary>For each heading the first line of its band.</summary>
    public List<int> Tops { get; }

    /// <summary>The index among the headings of the one that a line goes with; -1 when it goes with none.</summary>
    public int HeadOf(int line) =>
        isRuled && lines[line].Page == lines[0].Page
            ? heads.FindIndex(h => Band(lines[h]) == Band(lines[line]))
            : Tops.FindLastIndex(t => t <= line);

    private int Band(TextLine line) =>
        level.Where(r => r.Page == line.Page && r.Box.CentreY < line.Box.CentreY).Select(r => Math.Round(r.Box.CentreY)).Distinct().Count();

    private double Gap(int at) =>
        lines[at].IsBeside(lines[at - 1]) ? lines[at].Frame.Bottom - lines[at - 1].Frame.Bottom : double.PositiveInfinity;

    private int Top(int above, int head)
    {
        List<int> between = [.. Enumerable.Range(above + 1, head - above)];
        if (lines[above].Page == lines[head].Page && Band(lines[above]) != Band(lines[head]))
        {
            return between.First(i => Band(lines[i]) == Band(lines[head]));
        }

        // The end of a cell that a page's end tore stands above a wider gap than any between the lines of a cell.
        int page = between.FindLast(i => double.IsInfinity(Gap(i)));
        List<int> own = [.. between.Where(i => i > page)];
        if (page > 0 && (own.Count == 0 || own.Max(Gap) < WidestPitch * lines[head].Words[0].TypeSize))
        {
            return page;
        }

        int widest = own.MaxBy(Gap);
        double others = own.Where(i => i != widest).Select(Gap).DefaultIfEmpty(0).Max();
        return Gap(widest) > ClearlyWider * others ? widest : head;
    }

    // Above the first heading stand the upper lines of its own cells, or what is no part of the table.
    private int FirstTop()
    {
        int top = heads[0];
        double below = heads.Count > 1 ? Gap(Top(heads[0], heads[1])) : double.PositiveInfinity;
        while (top > 0 && ClearlyWider * Gap(top) < below && !double.IsInfinity(below) && !RunsOver(lines[top - 1]))
        {
            top--;
        }

        return top;
    }

    private bool RunsOver(TextLine line) => line.Phrases().Any(p => p.Frame.Left < edge && p.Frame.Right > edge);
}

using Chandlery.Intake.Pages;

namespace Chandlery.Intake.Tables;

/// <summary>
/// A second reading of rows, by nothing but how their cells stand to each other. A table's cells begin at one height, or have one middle,
/// or end at one height, in all rows alike; a line that went to the wrong row shifts its cell by half a line at least.
/// </summary>
internal static class RowAlignment
{
    /// <summary>The doubt of a row whose cells stand otherwise than those of other rows.</summary>
    public const string Askew = "its cells do not stand to each other as in other rows: a line may belong to the row above or below";

    /// <summary>The doubt of a row with a cell whose lines stand far apart.</summary>
    public const string Apart = "in one of its cells a line stands far from the others: it may belong to another row, or head several";

    private const double SameOfTypeSize = 0.3;
    private const double Mostly = 0.6;
    private const double ClearlyWider = 1.5;
    private const double WidePitchOfTypeSize = 1.7;

    /// <summary>The rows, with doubts where they stand askew.</summary>
    /// <param name="rows">Rows of a table.</param>
    /// <param name="notes">Parts of cells that are notes under a row and have a place of their own.</param>
    public static IReadOnlyList<Row> Checked(IReadOnlyList<Row> rows, IReadOnlySet<TextLine> notes)
    {
        List<List<List<TextLine>>> cells = [.. rows.Select(r => Cells(r, notes))];
        List<double> steps = [.. cells.SelectMany(r => r.SelectMany(Steps)).Order()];
        double usual = steps.Count == 0 ? double.MaxValue : steps[steps.Count / 2];
        List<Stand?> stands = [.. cells.Select(StandOf)];
        List<Stand> telling = [.. stands.OfType<Stand>()];
        Func<Stand, bool> way = new Func<Stand, bool>[] { s => s.Begin, s => s.Centre, s => s.End }.MaxBy(w => telling.Count(w))!;
        bool isClear = telling.Count(way) >= Mostly * telling.Count;
        return
        [
            .. rows.Select(
                (row, i) =>
                {
                    bool askew = stands[i] is { } stand && !(isClear && way(stand));
                    bool apart = cells[i].Exists(c => IsApart(c, usual));
                    return row with
                    {
                        Doubts = [.. row.Doubts, .. askew ? [Askew] : Array.Empty<string>(), .. apart ? [Apart] : Array.Empty<string>()],
                    };
                }
            ),
        ];
    }

    private static List<List<TextLine>> Cells(Row row, IReadOnlySet<TextLine> notes) =>
        [.. row.Cells.Select(c => c.Lines.Where(l => !notes.Contains(l)).ToList()).Where(c => c.Count > 0)];

    // Null where the row goes over a page's end, or where all of its cells have as many lines, so that it tells nothing.
    private static Stand? StandOf(List<List<TextLine>> cells)
    {
        if (cells.Count < 2 || !cells.SelectMany(c => c).All(l => l.IsBeside(cells[0][0])))
        {
            return null;
        }

        double same = SameOfTypeSize * cells[0][0].Words[0].TypeSize;
        bool Agree(Func<List<TextLine>, double> place) => cells.Max(place) - cells.Min(place) < same;
        bool begin = Agree(c => c[0].Frame.Bottom);
        bool end = Agree(c => c[^1].Frame.Bottom);
        return begin && end ? null : new Stand(begin, Agree(c => (c[0].Frame.Bottom + c[^1].Frame.Bottom) / 2), end);
    }

    private static IEnumerable<double> Steps(List<TextLine> lines) =>
        lines.Zip(lines.Skip(1)).Where(p => p.First.IsBeside(p.Second)).Select(p => p.Second.Frame.Bottom - p.First.Frame.Bottom);

    private static bool IsApart(List<TextLine> lines, double usual) =>
        Steps(lines).Any(s => s > ClearlyWider * usual && s > WidePitchOfTypeSize * lines[0].Words[0].TypeSize);

    /// <summary>How a row's cells stand to each other.</summary>
    /// <param name="Begin">They begin at one height.</param>
    /// <param name="Centre">They have one middle.</param>
    /// <param name="End">They end at one height.</param>
    private sealed record Stand(bool Begin, bool Centre, bool End);
}

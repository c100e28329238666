using Chandlery.Intake.Pages;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Tables;

/// <summary>Puts labelled blocks that stand side by side, as cards do, under each other.</summary>
internal static class SideBySide
{
    private const double SameEdgeMm = 1.5;
    private const double RoomMm = 0.5;
    private const int MostBlocks = 6;

    /// <summary>The lines of the left blocks and then those of the blocks right of them; null where no blocks stand side by side.</summary>
    /// <param name="lines">Lines of a section.</param>
    /// <param name="wording">Labels.</param>
    public static IReadOnlyList<TextLine>? Parted(IReadOnlyList<TextLine> lines, SheetWording wording)
    {
        lines = [.. lines.TakeWhile(l => !Phrase.AnyIn(wording.Lists["tableEnds"], l.Text))];
        bool IsLabelled(TextLine phrase) =>
            ColumnKind.HasCas(phrase.Text) && Phrase.AfterLabel(phrase.Text, wording.Labels["casNumber"]) is not null;
        List<int> numbered = [.. Enumerable.Range(0, lines.Count).Where(i => lines[i].Phrases().Any(IsLabelled))];
        List<double> starts = [];
        foreach (double left in numbered.SelectMany(i => lines[i].Phrases()).Where(IsLabelled).Select(p => p.Frame.Left).Order())
        {
            if (starts.Count == 0 || left - starts[^1] > SameEdgeMm)
            {
                starts.Add(left);
            }
        }

        if (starts.Count is < 2 or > MostBlocks || !numbered.Any(i => lines[i].Phrases().Count(IsLabelled) > 1))
        {
            return null;
        }

        bool IsWhole(TextLine line) => starts.Skip(1).Any(s => Crosses(line, s));
        if (lines.Skip(numbered[0]).Take(numbered[^1] - numbered[0] + 1).Any(IsWhole))
        {
            return null;
        }

        // Lines across the page stand before and after the blocks.
        return
        [
            .. starts.SelectMany(
                (from, at) =>
                    Stream(
                        lines.Where(l => at == 0 || !IsWhole(l)),
                        IsWhole,
                        at == 0 ? double.NegativeInfinity : from - RoomMm,
                        at + 1 < starts.Count ? starts[at + 1] - RoomMm : double.PositiveInfinity
                    )
            ),
        ];
    }

    private static bool Crosses(TextLine line, double start) =>
        line.Words.Any(w => w.Box.Left < start - RoomMm && w.Box.Right > start - RoomMm);

    private static IEnumerable<TextLine> Stream(IEnumerable<TextLine> lines, Func<TextLine, bool> isWhole, double from, double to) =>
        lines
            .Select(l => (Line: l, Words: isWhole(l) ? l.Words : [.. l.Words.Where(w => w.Box.Left >= from && w.Box.Left < to)]))
            .Where(l => l.Words.Count > 0)
            .Select(l => l.Line.Only(l.Words));
}

using Chandlery.Intake.Pages;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Tables;

/// <summary>Parts tables that stand side by side under one heading which says everything twice.</summary>
internal static class Panels
{
    private const double RoomMm = 1;

    /// <summary>The lines of each table; all lines at once when there is only one.</summary>
    public static IEnumerable<IReadOnlyList<TextLine>> Of(IReadOnlyList<TextLine> lines, SheetWording wording)
    {
        TextLine? heading = lines.FirstOrDefault(l => ColumnKind.IsTableHeading(l, wording));
        List<double> starts = [];
        string? first = null;
        foreach (TextLine phrase in heading?.Phrases() ?? [])
        {
            first ??= phrase.Text;
            if (phrase.Text == first)
            {
                starts.Add(phrase.Frame.Left - RoomMm);
            }
        }

        if (starts.Count < 2)
        {
            yield return lines;
            yield break;
        }

        for (int p = 0; p < starts.Count; p++)
        {
            double from = p == 0 ? double.NegativeInfinity : starts[p];
            double to = p + 1 < starts.Count ? starts[p + 1] : double.PositiveInfinity;
            yield return
            [
                .. lines
                    .Select(l => (Line: l, Words: l.Words.Where(w => w.Box.Left >= from && w.Box.Left < to).ToList()))
                    .Where(l => l.Words.Count > 0)
                    .Select(l => l.Line.Only(l.Words)),
            ];
        }
    }
}

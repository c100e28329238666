using System.Xml.Linq;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Layout;
using Chandlery.Paper.Markup;

namespace Chandlery.Paper.Blocks;

/// <summary>Burn-safety symbols side by side, in even rows where one does not hold them all.</summary>
/// <param name="Symbols">Names, each with a caption (empty for none) and what it says in words.</param>
/// <param name="SideMm">Side of a symbol.</param>
public sealed record SymbolRow(IReadOnlyList<(string Name, string Caption, string About)> Symbols, double SideMm) : Block
{
    private const double StepMm = 0.25;
    private const double ToleranceMm = 0.01;

    internal static readonly BlockKind Kind = new("symbols", Read);

    // Captions are measured once, however often the row is laid out.
    private IReadOnlyList<Piece> Captions { get; } = [.. Symbols.Select(s => new Piece(s.Caption, Weight.Regular, false))];

    /// <inheritdoc/>
    internal override IEnumerable<string> SymbolNames => Symbols.Select(s => s.Name);

    /// <inheritdoc/>
    internal override void Lay(Flow flow)
    {
        flow.FindRoom(SideMm, SideMm);
        double typeSize = flow.Sizes.TypeSizeMm;
        double[] widths = [.. Captions.Select(c => Math.Max(SideMm, c.WidthEm * typeSize))];
        foreach (Row row in Rows(flow, widths))
        {
            Place(flow, row, widths);
            flow.Y = row.BottomMm;
        }
    }

    // As few rows as there must be, and none of them much longer than another: a last sign alone looks forgotten.
    private List<Row> Rows(Flow flow, double[] widths)
    {
        List<Row> fewest = Rows(flow, widths, widths.Length);
        int even = (widths.Length + fewest.Count - 1) / Math.Max(1, fewest.Count);
        return Enumerable
                .Range(even, Math.Max(0, widths.Length - even))
                .Select(most => Rows(flow, widths, most))
                .FirstOrDefault(rows => rows.Count <= fewest.Count)
            ?? fewest;
    }

    private List<Row> Rows(Flow flow, double[] widths, int most)
    {
        double height = SideMm + (Symbols.Any(s => s.Caption.Length > 0) ? flow.Sizes.TypeSizeMm * flow.Sizes.LineSpacing : 0);
        var rows = new List<Row>();
        double top = flow.Y;
        double end = double.IsInfinity(flow.Region.BottomMm) ? top : flow.Region.BottomMm;
        for (int from = 0, count; from < widths.Length; from += count)
        {
            (double Left, double Right)? free = flow.Region.Edges(top, top + height);
            while (free is null && (top < flow.Region.FloatsEndMm || top <= end))
            {
                top += StepMm;
                free = flow.Region.Edges(top, top + height);
            }

            // Below the end of a shape there is no room at all: the row is set there all the same, and overflows.
            (double left, double right) = free ?? (0, 0);
            double used = left + widths[from];
            for (count = 1; count < most && from + count < widths.Length; count++)
            {
                double next = used + Flow.SymbolGapMm + widths[from + count];
                if (next > right)
                {
                    break;
                }

                used = next;
            }

            rows.Add(new Row(from, count, top, top + height, (left, right), used - left));
            top = rows[^1].BottomMm + Flow.SymbolGapMm;
        }

        return rows;
    }

    private void Place(Flow flow, Row row, double[] widths)
    {
        double x = flow.Region.IsRound ? Math.Max(row.Free.Left, (row.Free.Left + row.Free.Right - row.WidthMm) / 2) : row.Free.Left;
        flow.Overflows(x + row.WidthMm - row.Free.Right);
        for (int i = row.From; i < row.From + row.Count; i++)
        {
            double left = x;
            double right = x + widths[i];
            flow.PlaceSymbol(Symbols[i].Name, left + ((widths[i] - SideMm) / 2), row.TopMm, SideMm, Symbols[i].About);
            if (Symbols[i].Caption.Length > 0)
            {
                flow.PlaceText(
                    [Captions[i]],
                    flow.Sizes.TypeSizeMm,
                    Align.Centre,
                    row.TopMm + SideMm,
                    (_, _) => [(left, right + ToleranceMm)]
                );
            }

            x = right + Flow.SymbolGapMm;
        }
    }

    private static SymbolRow Read(XElement element, MarkupReading reading) =>
        new(
            [
                .. element
                    .Elements("s")
                    .Select(s => ((string?)s.Attribute("name") ?? "", s.Value.Trim(), (string?)s.Attribute("about") ?? "")),
            ],
            reading.Number(element, "side", 6)
        );

    private sealed record Row(int From, int Count, double TopMm, double BottomMm, (double Left, double Right) Free, double WidthMm);
}

using System.Globalization;
using System.Xml.Linq;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Layout;
using Chandlery.Paper.Markup;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Blocks;

/// <summary>A table with a thin line under each row.</summary>
/// <param name="Widths">Width of each column as a share of the whole; they add up to 1.</param>
/// <param name="Rows">Rows.</param>
public sealed record Table(IReadOnlyList<double> Widths, IReadOnlyList<TableRow> Rows) : Block
{
    internal static readonly BlockKind Kind = new("table", Read);

    private const double PadMm = 0.8;

    /// <inheritdoc/>
    internal override TagRole? Role => TagRole.Table;

    /// <inheritdoc/>
    internal override void Lay(Flow flow)
    {
        foreach (TableRow row in Rows)
        {
            if (flow.Region.Edges(flow.Y, flow.Y) is not { } free)
            {
                return;
            }

            flow.Tagged(TagRole.TableRow, "", () => LayRow(flow, row, free));
            flow.PlaceLine(free, row.IsHeading ? Ink.Black : Ink.Grey);
        }
    }

    private void LayRow(Flow flow, TableRow row, (double Left, double Right) free)
    {
        double left = free.Left;
        double end = flow.Y;
        for (int c = 0; c < Widths.Count; c++)
        {
            double width = Widths[c] * (free.Right - free.Left);
            double from = left;
            IReadOnlyList<Span> cell = row.Cells[c];
            flow.Tagged(
                row.IsHeading ? TagRole.TableHeader : TagRole.TableCell,
                "",
                () =>
                    end = Math.Max(
                        end,
                        flow.PlaceText(
                            LineBreaker.Pieces(cell),
                            flow.Sizes.TypeSizeMm,
                            Align.Left,
                            flow.Y + PadMm,
                            (_, _) => [(from, from + width - (PadMm * 2))]
                        )
                    )
            );
            left += width;
        }

        flow.Y = end + PadMm;
    }

    private static Table? Read(XElement element, MarkupReading reading)
    {
        double[] widths =
        [
            .. MarkupReading.Words(element, "widths").Select(w => double.TryParse(w, CultureInfo.InvariantCulture, out double n) ? n : 0),
        ];
        if (widths.Length == 0 || widths.Any(w => w <= 0))
        {
            reading.Complain(element, "A table needs the widths of its columns.", "Write widths=\"30 20 50\".");
            return null;
        }

        var rows = new List<TableRow>();
        foreach (XElement row in element.Elements("tr"))
        {
            bool heading = row.Elements("th").Any();
            List<IReadOnlyList<Span>> cells =
            [
                .. row.Elements().Select(c => (IReadOnlyList<Span>)reading.Spans(c, heading ? Weight.Bold : Weight.Regular)),
            ];
            if (cells.Count != widths.Length)
            {
                reading.Complain(row, $"This row has {cells.Count} cells, but the table has {widths.Length} columns.");
                return null;
            }

            rows.Add(new TableRow(cells, heading));
        }

        return new Table([.. widths.Select(w => w / widths.Sum())], rows);
    }
}

using System.Xml.Linq;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Layout;
using Chandlery.Paper.Markup;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Blocks;

/// <summary>Messages with their symbols, in columns.</summary>
/// <param name="Items">Symbol (empty for a plain line) and text.</param>
/// <param name="Columns">Number of columns.</param>
/// <param name="Side">Side of a symbol as a multiple of the base type size.</param>
public sealed record Messages(IReadOnlyList<(string Symbol, string Text)> Items, int Columns, double Side) : Block
{
    internal static readonly BlockKind Kind = new("messages", Read);

    private const double RowGapEm = 0.7;
    private const double ColumnGapEm = 1.4;
    private const double TextGapEm = 0.7;
    private const double PadEm = 0.9;

    /// <summary>Whether a text stands below its symbol instead of beside it.</summary>
    public bool IsStacked { get; init; }

    /// <summary>Whether they stand in white on a black box.</summary>
    public bool IsOnBlack { get; init; }

    /// <summary>Weight of the texts.</summary>
    public Weight Weight { get; init; } = Weight.Regular;

    /// <inheritdoc/>
    internal override IEnumerable<string> SymbolNames => Items.Select(i => i.Symbol);

    /// <inheritdoc/>
    internal override int Stretches => Math.Max(0, Rows - 1);

    private int Rows => (Items.Count + Columns - 1) / Columns;

    /// <inheritdoc/>
    internal override void Lay(Flow flow)
    {
        if (flow.Region.Edges(flow.Y, flow.Y) is not { } free || Items.Count == 0)
        {
            return;
        }

        if (!IsOnBlack)
        {
            LayRows(flow, free);
            return;
        }

        double pad = PadEm * flow.Sizes.TypeSizeMm;
        flow.OnBlack(pad, () => LayRows(flow, (free.Left + pad, free.Right - pad)));
    }

    private void LayRows(Flow flow, (double Left, double Right) free)
    {
        double size = flow.Sizes.TypeSizeMm;
        double gap = ColumnGapEm * size;
        double column = (free.Right - free.Left - (gap * (Columns - 1))) / Columns;
        for (int row = 0; row < Rows; row++)
        {
            if (row > 0)
            {
                flow.Y += (RowGapEm * size) + flow.Sizes.SpareRowMm;
            }

            List<(string Symbol, string Text)> inRow = [.. Items.Skip(row * Columns).Take(Columns)];
            double top = flow.Y;
            double end = top;
            double height = inRow.Max(i => HeightOf(flow, i.Text, column));
            for (int c = 0; c < inRow.Count; c++)
            {
                double left = free.Left + (c * (column + gap));
                // Whoever stands alone in the last row may use all of it.
                double right = inRow.Count == 1 ? free.Right : left + column;
                end = Math.Max(end, LayOne(flow, inRow[c], (left, right), top, Math.Max(height, Side * size)));
            }

            flow.Y = end;
        }
    }

    // A symbol and a text beside each other stand in the middle of their row; one above the other they begin at its top.
    private double LayOne(Flow flow, (string Symbol, string Text) item, (double Left, double Right) between, double top, double rowHeight)
    {
        double size = flow.Sizes.TypeSizeMm;
        double side = item.Symbol.Length > 0 ? Side * size : 0;
        double gap = item.Symbol.Length > 0 ? TextGapEm * size : 0;
        List<Piece> pieces = Pieces(item.Text);
        double textLeft = IsStacked ? between.Left : between.Left + side + gap;
        double textTop = IsStacked ? top + side + gap : top + ((rowHeight - flow.HeightOf(pieces, between.Right - textLeft)) / 2);
        double symbolTop = IsStacked ? top : top + ((rowHeight - side) / 2);
        if (item.Symbol.Length > 0)
        {
            flow.PlaceSymbol(item.Symbol, between.Left, symbolTop, side);
        }

        double end = 0;
        flow.Tagged(
            TagRole.Paragraph,
            Language,
            () => end = flow.PlaceText(pieces, size, Align.Left, textTop, (_, _) => [(textLeft, between.Right)])
        );
        return Math.Max(end, IsStacked ? end : top + rowHeight);
    }

    private double HeightOf(Flow flow, string text, double column) =>
        flow.HeightOf(Pieces(text), IsStacked ? column : column - ((Side + TextGapEm) * flow.Sizes.TypeSizeMm));

    private List<Piece> Pieces(string text) => LineBreaker.Pieces([new Span(text, Weight)]);

    private static Messages Read(XElement element, MarkupReading reading) =>
        new(
            [
                .. element
                    .Elements("m")
                    .Select(m => ((string?)m.Attribute("symbol") ?? "", reading.Breaks.In(MarkupReading.OneLine(m.Value)))),
            ],
            Math.Max(1, (int)reading.Number(element, "columns", 1)),
            reading.Number(element, "side", 2.6)
        )
        {
            IsStacked = (string?)element.Attribute("stacked") == "yes",
            IsOnBlack = (string?)element.Attribute("on") == "black",
            Weight = (string?)element.Attribute("weight") == "bold" ? Weight.Bold : Weight.Regular,
        };
}

using System.Xml.Linq;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Layout;
using Chandlery.Paper.Markup;

namespace Chandlery.Paper.Blocks;

/// <summary>Messages beside their symbols, in columns.</summary>
/// <param name="Items">Symbol (empty for a plain line) and text.</param>
/// <param name="Columns">Number of columns.</param>
/// <param name="SideMm">Side of a symbol.</param>
public sealed record Messages(IReadOnlyList<(string Symbol, string Text)> Items, int Columns, double SideMm) : Block
{
    internal static readonly BlockKind Kind = new("messages", Read);

    /// <inheritdoc/>
    internal override IEnumerable<string> SymbolNames => Items.Select(i => i.Symbol);

    /// <inheritdoc/>
    internal override void Lay(Flow flow)
    {
        if (flow.Region.Edges(flow.Y, flow.Y + SideMm) is not { } free)
        {
            flow.Y += SideMm;
            return;
        }

        double gap = Flow.SymbolGapMm * 2;
        double column = (free.Right - free.Left - (gap * (Columns - 1))) / Columns;
        for (int start = 0; start < Items.Count; start += Columns)
        {
            double end = flow.Y;
            for (int c = 0; c < Columns && start + c < Items.Count; c++)
            {
                (string symbol, string text) = Items[start + c];
                double left = free.Left + (c * (column + gap));
                double textLeft = left + SideMm + Flow.SymbolGapMm;
                List<Piece> pieces = LineBreaker.Pieces([new Span(text, Weight.Regular)]);
                double textTop = flow.Y + Math.Max(0, (SideMm - flow.HeightOf(pieces, left + column - textLeft)) / 2);
                double textEnd = flow.PlaceText(pieces, flow.Sizes.TypeSizeMm, Align.Left, textTop, (_, _) => [(textLeft, left + column)]);
                end = Math.Max(end, textEnd);
                if (symbol.Length > 0)
                {
                    flow.PlaceSymbol(symbol, left, flow.Y, SideMm);
                    end = Math.Max(end, flow.Y + SideMm);
                }
            }

            flow.Y = end + Flow.SymbolGapMm;
        }
    }

    private static Messages Read(XElement element, MarkupReading reading) =>
        new(
            [.. element.Elements("m").Select(m => ((string?)m.Attribute("symbol") ?? "", MarkupReading.OneLine(m.Value)))],
            (int)reading.Number(element, "columns", 1),
            reading.Number(element, "side", 8)
        );
}

using Chandlery.Paper.Barcodes;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Markup;
using Chandlery.Paper.Scenes;
using Chandlery.Paper.Symbols;

namespace Chandlery.Paper.Layout;

/// <summary>Stacks blocks from top to bottom inside a region.</summary>
internal sealed class FlowLayout
{
    private const double FloatGapMm = 1.5;
    private const double SymbolGapMm = 1.2;
    private const double RuleUnits = 0.2;

    private readonly Region region;
    private readonly LayoutSizes sizes;
    private readonly SymbolSheet symbols;
    private readonly bool placing;
    private readonly List<SceneItem> items = [];
    private readonly List<Mark> marks = [];
    private double y;
    private double overflow;

    private FlowLayout(Region region, LayoutSizes sizes, SymbolSheet symbols, bool placing)
    {
        this.region = region;
        this.sizes = sizes;
        this.symbols = symbols;
        this.placing = placing;
        y = region.TopMm;
    }

    /// <summary>Lays blocks out; the result may end below the region, which then is too small.</summary>
    public static LayoutResult Lay(IReadOnlyList<Block> blocks, Region region, LayoutSizes sizes, SymbolSheet symbols) =>
        Lay(blocks, region, sizes, symbols, placing: true);

    /// <summary>What a layout would come to, without its items and marks: most sizes are only tried.</summary>
    public static LayoutResult Measure(IReadOnlyList<Block> blocks, Region region, LayoutSizes sizes, SymbolSheet symbols) =>
        Lay(blocks, region, sizes, symbols, placing: false);

    private static LayoutResult Lay(IReadOnlyList<Block> blocks, Region region, LayoutSizes sizes, SymbolSheet symbols, bool placing)
    {
        var layout = new FlowLayout(region, sizes, symbols, placing);
        foreach (Block block in blocks)
        {
            layout.Add(block);
        }

        return new LayoutResult(layout.items, layout.marks, Math.Max(layout.y, region.FloatsEndMm), layout.overflow);
    }

    private void Add(Block block)
    {
        switch (block)
        {
            case Paragraph paragraph:
                AddParagraph(paragraph);
                break;
            case Pictograms pictograms:
                AddPictograms(pictograms);
                break;
            case SymbolRow row:
                AddSymbols(row);
                break;
            case Messages messages:
                AddMessages(messages);
                break;
            case Codes codes:
                AddCodes(codes);
                break;
            case Table table:
                AddTable(table);
                break;
            case Gap gap:
                y += gap.Size * sizes.TypeSizeMm;
                break;
            case Rule:
                AddRule();
                break;
            default:
                throw new InvalidOperationException($"no layout for {block.GetType().Name}");
        }
    }

    private void AddParagraph(Paragraph paragraph)
    {
        double size = Math.Max(
            paragraph.Size * sizes.TypeSizeMm,
            paragraph.FigureMm / paragraph.Spans.Min(s => Face.Of(s.Weight).DigitHeight)
        );
        Align align = region.IsRound ? Align.Centre : paragraph.Align;
        y = AddText(LineBreaker.Pieces(paragraph.Spans), size, align, y, region.Stretches);
    }

    // Sets pieces line by line into the stretches that are free at each height; returns the lower end.
    private double AddText(
        List<Piece> pieces,
        double size,
        Align align,
        double top,
        Func<double, double, IReadOnlyList<(double Left, double Right)>> stretches
    )
    {
        double lineHeight = size * sizes.LineSpacing;
        Face face = Face.Of(Weight.Regular);
        double aboveBaseline = ((sizes.LineSpacing - face.Ascent - face.Descent) / 2) + face.Ascent;
        int at = 0;
        double line = top;
        while (at < pieces.Count)
        {
            // Round a narrow top or a hole a line may find no room: look a little lower.
            bool set = false;
            IReadOnlyList<(double Left, double Right)> free = stretches(line, line + lineHeight);
            foreach ((double left, double right) in free)
            {
                if (at == pieces.Count)
                {
                    break;
                }

                int count = LineBreaker.Fill(pieces, at, right - left, size, out double tooWide);
                bool mayWait = line + lineHeight <= region.BottomMm;
                if (tooWide > 0 && (free.Count > 1 || (mayWait && CouldWiden(line, lineHeight, stretches, right - left))))
                {
                    continue;
                }

                overflow = Math.Max(overflow, tooWide);
                if (placing)
                {
                    AddLine(pieces.GetRange(at, count), size, align, (left, right), line + (aboveBaseline * size));
                }

                at += count;
                set = true;
            }

            line += set ? lineHeight : lineHeight / 4;
            if (!set && line > region.BottomMm)
            {
                return line + lineHeight;
            }
        }

        return line;
    }

    // Whether a little lower there is more room, as in the upper half of a circle.
    private static bool CouldWiden(
        double line,
        double lineHeight,
        Func<double, double, IReadOnlyList<(double Left, double Right)>> stretches,
        double width
    )
    {
        IReadOnlyList<(double Left, double Right)> below = stretches(line + (lineHeight / 4), line + (lineHeight * 1.25));
        return below.Any(b => b.Right - b.Left > width + 1e-9);
    }

    private void AddLine(List<Piece> pieces, double size, Align align, (double Left, double Right) free, double baseline)
    {
        // Neighbouring pieces of one weight are shaped as one text, so that it reads back as one.
        var runs = new List<TextItem>();
        double x = free.Left;
        for (int i = 0; i < pieces.Count; )
        {
            Weight weight = pieces[i].Weight;
            string text = i > 0 && pieces[i].SpaceBefore ? " " : "";
            int j = i;
            for (; j < pieces.Count && pieces[j].Weight == weight; j++)
            {
                text += (j > i && pieces[j].SpaceBefore ? " " : "") + pieces[j].Text;
            }

            var item = new TextItem(Face.Of(weight).Shape(text), weight, x, baseline, size, Ink.Black);
            runs.Add(item);
            x += item.WidthMm;
            i = j;
        }

        double spare = free.Right - x;
        double shift = align switch
        {
            Align.Left => 0,
            Align.Centre => spare / 2,
            _ => spare,
        };
        items.AddRange(shift == 0 ? runs : runs.Select(r => r with { XMm = r.XMm + shift }));
    }

    private void AddPictograms(Pictograms pictograms)
    {
        if (pictograms.Codes.Count == 0)
        {
            return;
        }

        // A square on its point is as wide as its diagonal.
        double width = sizes.PictogramMm * Math.Sqrt(2);
        FindRoom(width, width);
        if (region.Edges(y, y + width) is not { } free)
        {
            y += width;
            overflow = Math.Max(overflow, width);
            return;
        }

        double x = free.Left;
        double top = y;
        double right = free.Left;
        foreach (string code in pictograms.Codes)
        {
            // Pictures stand side by side while text still finds half the width beside them, else below each other.
            if (x > free.Left && x + width > free.Left + ((free.Right - free.Left) / 2))
            {
                x = free.Left;
                top += width;
            }

            PlaceSymbol(code, x, top, width);
            x += width;
            right = Math.Max(right, x);
        }

        region.FloatAtTopLeft(right + FloatGapMm, top + width);
        overflow = Math.Max(overflow, right - free.Right);
    }

    private double Middle((double Left, double Right) free, SymbolRow row)
    {
        double width =
            row.Symbols.Sum(s => Math.Max(row.SideMm, LineBreaker.Width(s.Caption, Weight.Regular, sizes.TypeSizeMm)) + SymbolGapMm)
            - SymbolGapMm;
        return ((free.Left + free.Right) / 2) - (width / 2);
    }

    // Moves down until something of this size finds room, as below the top of a circle.
    private void FindRoom(double width, double height)
    {
        const double stepMm = 0.25;
        while (y + height <= region.BottomMm && !double.IsInfinity(region.BottomMm))
        {
            if (region.Edges(y, y + height) is { } free && free.Right - free.Left >= width)
            {
                return;
            }

            y += stepMm;
        }
    }

    private void AddSymbols(SymbolRow row)
    {
        FindRoom(row.SideMm, row.SideMm);
        double caption = row.Symbols.Any(s => s.Caption.Length > 0) ? sizes.TypeSizeMm * sizes.LineSpacing : 0;
        double height = row.SideMm + caption;
        double? x = null;
        (double Left, double Right)? free = null;
        foreach ((string name, string text) in row.Symbols)
        {
            double width = Math.Max(row.SideMm, LineBreaker.Width(text, Weight.Regular, sizes.TypeSizeMm));
            if (x is { } next && next + width > free!.Value.Right)
            {
                y += height + SymbolGapMm;
                x = null;
            }

            if (x is null)
            {
                free = region.Edges(y, y + height);
                if (free is null)
                {
                    y += height;
                    continue;
                }

                x = region.IsRound ? Math.Max(free.Value.Left, Middle(free.Value, row)) : free.Value.Left;
            }

            overflow = Math.Max(overflow, x.Value + width - free!.Value.Right);
            double left = x.Value + ((width - row.SideMm) / 2);
            PlaceSymbol(name, left, y, row.SideMm);
            if (text.Length > 0)
            {
                AddText(
                    [new Piece(text, Weight.Regular, false)],
                    sizes.TypeSizeMm,
                    Align.Centre,
                    y + row.SideMm,
                    (_, _) => [(x.Value, x.Value + width + 0.01)]
                );
            }

            x += width + SymbolGapMm;
        }

        y += height;
    }

    private void AddMessages(Messages messages)
    {
        if (region.Edges(y, y + messages.SideMm) is not { } free)
        {
            y += messages.SideMm;
            return;
        }

        double gap = SymbolGapMm * 2;
        double column = (free.Right - free.Left - (gap * (messages.Columns - 1))) / messages.Columns;
        for (int start = 0; start < messages.Items.Count; start += messages.Columns)
        {
            double end = y;
            for (int c = 0; c < messages.Columns && start + c < messages.Items.Count; c++)
            {
                (string symbol, string text) = messages.Items[start + c];
                double left = free.Left + (c * (column + gap));
                double textLeft = left + messages.SideMm + SymbolGapMm;
                List<Piece> pieces = LineBreaker.Pieces([new Span(text, Weight.Regular)]);
                double height = MeasureText(pieces, left + column - textLeft);
                double textTop = y + Math.Max(0, (messages.SideMm - height) / 2);
                end = Math.Max(end, AddText(pieces, sizes.TypeSizeMm, Align.Left, textTop, (_, _) => [(textLeft, left + column)]));
                if (symbol.Length > 0)
                {
                    PlaceSymbol(symbol, left, y, messages.SideMm);
                    end = Math.Max(end, y + messages.SideMm);
                }
            }

            y = end + SymbolGapMm;
        }
    }

    private void AddCodes(Codes codes)
    {
        double qrSide = codes.QrText.Length > 0 ? CodeDrawing.QrSideMm(codes.QrText) : 0;
        double digits = sizes.TypeSizeMm * sizes.LineSpacing;
        double eanHeight = codes.Gtin.Length > 0 ? CodeDrawing.EanBarsMm + digits : 0;
        double eanWidth = codes.Gtin.Length > 0 ? CodeDrawing.EanWidthMm : 0;
        double height = Math.Max(qrSide, eanHeight);
        if (height == 0)
        {
            return;
        }

        FindRoom(qrSide + eanWidth, height);
        if (region.Edges(y, y + height) is not { } free)
        {
            y += height;
            overflow = Math.Max(overflow, qrSide + eanWidth);
            return;
        }

        overflow = Math.Max(overflow, qrSide + eanWidth - (free.Right - free.Left));
        if (qrSide > 0)
        {
            Place(() => CodeDrawing.Qr(codes.QrText, free.Left, y, qrSide), new Mark("QR code", free.Left, y, qrSide, qrSide));
        }

        if (eanWidth > 0)
        {
            double left = free.Left + qrSide;
            Place(() => CodeDrawing.Ean13(codes.Gtin, left, y), new Mark("EAN-13", left, y, eanWidth, CodeDrawing.EanBarsMm));
            AddText(
                [new Piece(codes.Gtin, Weight.Regular, false)],
                sizes.TypeSizeMm,
                Align.Centre,
                y + CodeDrawing.EanBarsMm,
                (_, _) => [(left, left + eanWidth)]
            );
        }

        y += height;
    }

    private void AddTable(Table table)
    {
        const double padMm = 0.8;
        foreach (TableRow row in table.Rows)
        {
            if (region.Edges(y, y) is not { } free)
            {
                return;
            }

            double left = free.Left;
            double end = y;
            for (int c = 0; c < table.Widths.Count; c++)
            {
                double width = table.Widths[c] * (free.Right - free.Left);
                double from = left;
                List<Piece> pieces = LineBreaker.Pieces(row.Cells[c]);
                end = Math.Max(
                    end,
                    AddText(pieces, sizes.TypeSizeMm, Align.Left, y + padMm, (_, _) => [(from, from + width - (padMm * 2))])
                );
                left += width;
            }

            y = end + padMm;
            items.Add(
                new PathItem(
                    System.FormattableString.Invariant($"M0 0 L{free.Right - free.Left:0.####} 0"),
                    free.Left,
                    y,
                    1,
                    null,
                    row.IsHeading ? Ink.Black : Ink.Grey,
                    RuleUnits
                )
            );
        }
    }

    private void PlaceSymbol(string name, double left, double top, double side)
    {
        if (placing)
        {
            items.AddRange(symbols.Place(name, left, top, side));
            marks.Add(new Mark(name, left, top, side, side));
        }
    }

    private void Place(Func<SceneItem> draw, Mark mark)
    {
        if (placing)
        {
            items.Add(draw());
            marks.Add(mark);
        }
    }

    private double MeasureText(List<Piece> pieces, double width)
    {
        int lines = 0;
        for (int at = 0; at < pieces.Count; lines++)
        {
            at += LineBreaker.Fill(pieces, at, width, sizes.TypeSizeMm, out _);
        }

        return lines * sizes.TypeSizeMm * sizes.LineSpacing;
    }

    private void AddRule()
    {
        double gap = sizes.TypeSizeMm * 0.4;
        y += gap;
        if (region.Edges(y, y) is { } free)
        {
            string path = System.FormattableString.Invariant($"M0 0 L{free.Right - free.Left:0.####} 0");
            items.Add(new PathItem(path, free.Left, y, 1, null, Ink.Grey, RuleUnits));
        }

        y += gap;
    }
}

using Chandlery.Paper.Blocks;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Scenes;
using Chandlery.Paper.Symbols;

namespace Chandlery.Paper.Layout;

/// <summary>A layout in the making: blocks place themselves at its height and move it down.</summary>
/// <param name="region">The room.</param>
/// <param name="sizes">Text sizes.</param>
/// <param name="symbols">Drawings.</param>
/// <param name="placing">False when only the need is measured: then items and marks are left out.</param>
internal sealed class Flow(Region region, LayoutSizes sizes, SymbolSheet symbols, bool placing)
{
    /// <summary>Distance of symbols from each other and from text.</summary>
    public const double SymbolGapMm = 1.2;

    private const double LineMm = 0.2;

    private readonly List<SceneItem> items = [];
    private readonly List<Mark> marks = [];
    private double overflow;

    /// <summary>The room.</summary>
    public Region Region => region;

    /// <summary>Text sizes.</summary>
    public LayoutSizes Sizes => sizes;

    /// <summary>Height at which the next block begins, millimetres from the page's top.</summary>
    public double Y { get; set; } = region.TopMm;

    /// <summary>What the layout came to.</summary>
    public LayoutResult Result => new(items, marks, Math.Max(Y, region.FloatsEndMm), overflow);

    /// <summary>Notes by how much something is too wide; nothing when it is not.</summary>
    public void Overflows(double byMm) => overflow = Math.Max(overflow, byMm);

    /// <summary>Moves down until something of this size finds room, as below the top of a circle.</summary>
    public void FindRoom(double width, double height)
    {
        const double stepMm = 0.25;
        while (Y + height <= region.BottomMm && !double.IsInfinity(region.BottomMm))
        {
            if (region.Edges(Y, Y + height) is { } free && free.Right - free.Left >= width)
            {
                return;
            }

            Y += stepMm;
        }
    }

    /// <summary>Sets pieces line by line into the stretches that are free at each height; returns the lower end.</summary>
    public double PlaceText(
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

                Overflows(tooWide);
                if (placing)
                {
                    PlaceRuns(pieces.GetRange(at, count), size, align, (left, right), line + (aboveBaseline * size));
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

    private void PlaceRuns(List<Piece> pieces, double size, Align align, (double Left, double Right) free, double baseline)
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

            var item = new TextItem(Face.Of(weight).Shape(text), Face.Of(weight), x, baseline, size, Ink.Black);
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

    /// <summary>Places a drawing.</summary>
    public void PlaceSymbol(string name, double left, double top, double side)
    {
        if (placing)
        {
            items.AddRange(symbols.Place(name, left, top, side));
            marks.Add(new Mark(name, left, top, side, side));
        }
    }

    /// <summary>Places something whose size matters; it is drawn only when it is needed.</summary>
    public void Place(Func<SceneItem> draw, Mark mark)
    {
        if (placing)
        {
            items.Add(draw());
            marks.Add(mark);
        }
    }

    /// <summary>Height that pieces take at the base size.</summary>
    public double HeightOf(List<Piece> pieces, double width)
    {
        int lines = 0;
        for (int at = 0; at < pieces.Count; lines++)
        {
            at += LineBreaker.Fill(pieces, at, width, sizes.TypeSizeMm, out _);
        }

        return lines * sizes.TypeSizeMm * sizes.LineSpacing;
    }

    /// <summary>Places a thin line at the present height.</summary>
    public void PlaceLine((double Left, double Right) between, Ink ink)
    {
        if (placing)
        {
            string path = FormattableString.Invariant($"M0 0 L{between.Right - between.Left:0.####} 0");
            items.Add(new PathItem(path, between.Left, Y, 1, null, ink, LineMm));
        }
    }
}

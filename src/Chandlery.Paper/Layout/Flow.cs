using Chandlery.Core.Law;
using Chandlery.Paper.Blocks;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Pdf;
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
    private (int Items, int Marks)? pushed;

    /// <summary>The room.</summary>
    public Region Region => region;

    /// <summary>Text sizes.</summary>
    public LayoutSizes Sizes => sizes;

    /// <summary>Height at which the next block begins, millimetres from the page's top.</summary>
    public double Y { get; set; } = region.TopMm;

    /// <summary>Lower end of everything, millimetres from the page's top.</summary>
    public double EndMm => Math.Max(Y, region.FloatsEndMm);

    /// <summary>By how much the widest unbreakable thing was too wide, millimetres; 0 when none was.</summary>
    public double OverflowMm => overflow;

    /// <summary>Begins anew at the top of the room, where only heights are measured.</summary>
    /// <exception cref="InvalidOperationException">Something floats in the room, or things have been placed: they would stay.</exception>
    public void Restart()
    {
        if (placing || region.HasFloats)
        {
            throw new InvalidOperationException("Only a measured flow in which nothing floats can begin anew.");
        }

        Y = region.TopMm;
        overflow = 0;
    }

    /// <summary>What the layout came to, with what was pushed at the foot of the room.</summary>
    public LayoutResult Result()
    {
        double end = EndMm;
        double down = region.BottomMm - end;
        if (pushed is not { } from || !placing || double.IsInfinity(down) || down <= 0)
        {
            return new LayoutResult(items, marks, end, overflow);
        }

        down = AsFarAsThereIsRoom(items.Skip(from.Items), down);
        return new LayoutResult(
            [.. items.Take(from.Items), .. items.Skip(from.Items).Select(i => i.Moved(0, down))],
            [.. marks.Take(from.Marks), .. marks.Skip(from.Marks).Select(m => m.Moved(0, down))],
            end,
            overflow
        );
    }

    // Where the room narrows towards its foot, as in a circle, things go down only as far as they still find their width.
    private double AsFarAsThereIsRoom(IEnumerable<SceneItem> things, double down)
    {
        const double stepMm = 0.25;
        if (!region.IsRound)
        {
            return down;
        }

        List<ItemBounds> boxes = [.. things.Select(t => ItemBounds.Of([t])).OfType<ItemBounds>()];
        for (double d = down; d > 0; d -= stepMm)
        {
            if (
                boxes.TrueForAll(b =>
                    region.Edges(b.TopMm + d, b.BottomMm + d) is { } free && free.Left <= b.LeftMm && b.RightMm <= free.Right
                )
            )
            {
                return d;
            }
        }

        return 0;
    }

    /// <summary>What comes from here on stands at the foot of the room.</summary>
    public void Push() => pushed ??= (items.Count, marks.Count);

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
        List<SetLine>? set = placing ? [] : null;
        double end = Fill(pieces, size, top, stretches, set);
        if (set is not null)
        {
            foreach (SetLine line in Even(pieces, set, size))
            {
                List<Piece> shown = WithoutSeparators(
                    pieces.GetRange(line.First, line.Count),
                    line.First > 0,
                    line.First + line.Count < pieces.Count
                );
                if (line.First + line.Count < pieces.Count && pieces[line.First + line.Count].IsSoft)
                {
                    shown[^1] = shown[^1] with { Text = shown[^1].Text + WordBreaks.Soft };
                }

                PlaceRuns(shown, size, align, (line.Left, line.Right), line.TopMm + (BaselineEm * size));
            }
        }

        return end;
    }

    // Line by line, as much as each holds: no way needs fewer lines. The lines are written down only where somebody wants them.
    private double Fill(
        List<Piece> pieces,
        double size,
        double top,
        Func<double, double, IReadOnlyList<(double Left, double Right)>> stretches,
        List<SetLine>? lines
    )
    {
        double lineHeight = size * sizes.LineSpacing;
        int at = 0;
        double line = top;
        while (at < pieces.Count)
        {
            // Round a narrow top or a hole a line may find no room: look a little lower.
            bool any = false;
            IReadOnlyList<(double Left, double Right)> free = stretches(line, line + lineHeight);
            for (int s = 0; s < free.Count && at < pieces.Count; s++)
            {
                (double left, double right) = free[s];
                int count = LineBreaker.Fill(pieces, at, right - left, size, out double tooWide);
                bool mayWait = line + lineHeight <= region.BottomMm;
                if (tooWide > 0 && (free.Count > 1 || (mayWait && CouldWiden(line, lineHeight, stretches, right - left))))
                {
                    continue;
                }

                Overflows(tooWide);
                lines?.Add(new SetLine(at, count, left, right, line));
                at += count;
                any = true;
            }

            line += any ? lineHeight : lineHeight / 4;
            if (!any && line > region.BottomMm)
            {
                return line + lineHeight;
            }
        }

        return line;
    }

    // The same lines with their words dealt out evenly; as they are where words are too wide anyway.
    private static IEnumerable<SetLine> Even(List<Piece> pieces, List<SetLine> lines, double size)
    {
        if (lines.Count < 2 || EvenLines.Break(pieces, [.. lines.Select(l => l.Right - l.Left)], size) is not { } counts)
        {
            return lines;
        }

        var even = new List<SetLine>();
        int first = 0;
        for (int i = 0; i < counts.Length; i++)
        {
            even.Add(lines[i] with { First = first, Count = counts[i] });
            first += counts[i];
        }

        return even;
    }

    // No line begins or ends with a dot that stands between two things.
    private static List<Piece> WithoutSeparators(List<Piece> line, bool hasBefore, bool hasAfter)
    {
        if (hasAfter && line.Count > 1 && line[^1] is { Text: "·" })
        {
            line.RemoveAt(line.Count - 1);
        }

        if (hasBefore && line.Count > 1 && line[0] is { Text: "·" })
        {
            line.RemoveAt(0);
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

    /// <summary>Marks what a step lays out as one thing for those who hear the document; nothing for a role of null.</summary>
    /// <param name="role">What it is.</param>
    /// <param name="language">Its language; empty for the document's.</param>
    /// <param name="lay">The step.</param>
    public void Tagged(TagRole? role, string language, Action lay)
    {
        int from = items.Count;
        lay();
        if (role is { } known && items.Count > from)
        {
            List<SceneItem> inside = items.GetRange(from, items.Count - from);
            items.RemoveRange(from, inside.Count);
            items.Add(new TaggedItem(known, inside) { Language = language.Length == 0 ? null : language });
        }
    }

    /// <summary>Places a drawing.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="left">Left edge.</param>
    /// <param name="top">Upper edge.</param>
    /// <param name="side">Side of its square.</param>
    /// <param name="about">What it says, in words; empty where the text beside it says the same.</param>
    public void PlaceSymbol(string name, double left, double top, double side, string about = "")
    {
        if (placing)
        {
            IEnumerable<SceneItem> drawing = symbols.Place(name, left, top, side);
            items.AddRange(about.Length == 0 ? drawing : [new TaggedItem(TagRole.Figure, [.. drawing]) { Alternative = about }]);
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

    /// <summary>How far below its upper edge a line of text has its baseline, in type sizes.</summary>
    public double BaselineEm =>
        ((sizes.LineSpacing - Face.Of(Weight.Regular).Ascent - Face.Of(Weight.Regular).Descent) / 2) + Face.Of(Weight.Regular).Ascent;

    /// <summary>Lays something out in white on a black box from edge to edge.</summary>
    /// <param name="padMm">How far the box reaches above and below what stands in it.</param>
    /// <param name="lay">What stands in it.</param>
    public void OnBlack(double padMm, Action lay)
    {
        int from = items.Count;
        double top = Y;
        Y += padMm;
        lay();
        Y += padMm;
        if (placing && region.Edges(top, Y) is { } free)
        {
            List<SceneItem> inside = items.GetRange(from, items.Count - from);
            items.RemoveRange(from, inside.Count);
            items.Add(new PathItem(Strokes.BoxPath(free.Right - free.Left, Y - top), free.Left, top, 1, Ink.Black, null, 0));
            items.AddRange(inside.Select(i => i.Reversed()));
        }
    }

    /// <summary>Places a thin line at the present height.</summary>
    public void PlaceLine((double Left, double Right) between, Ink ink, double widthMm = LineMm)
    {
        if (placing)
        {
            string path = FormattableString.Invariant($"M0 0 L{between.Right - between.Left:0.####} 0");
            items.Add(new PathItem(path, between.Left, Y, 1, null, ink, widthMm));
        }
    }
}

using Chandlery.Core.Making.Layouts;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Papers.WickTemplates;

/// <summary>Draws a layout at its true size on A4; a floor that is larger goes over several sheets, to be laid edge to edge.</summary>
internal sealed class TemplateDrawing(TemplateHead head, Floor floor, WickLayout layout)
{
    private const double ShortSideMm = 210;
    private const double LongSideMm = 297;
    private const double LeftMm = 22;
    private const double RightMm = 12;
    private const double TopMm = 46;
    private const double BottomMm = 24;
    private const double ThinMm = 0.12;
    private const double WallMm = 0.35;
    private const double CrossMm = 8;
    private const double HoleMm = 2;
    private const double TypeMm = 2.9;
    private const double NumberMm = 3.4;

    /// <summary>The sheets, from the upper left.</summary>
    public IReadOnlyList<Scene> Pages()
    {
        (double width, double height) = (floor.Highest.XMm - floor.Lowest.XMm, floor.Highest.YMm - floor.Lowest.YMm);
        bool fitsUpright = width <= RoomX(ShortSideMm) && height <= RoomY(LongSideMm);
        bool lies = !fitsUpright && width <= RoomX(LongSideMm) && height <= RoomY(ShortSideMm);
        (double pageWidth, double pageHeight) = lies ? (LongSideMm, ShortSideMm) : (ShortSideMm, LongSideMm);
        (double roomX, double roomY) = (RoomX(pageWidth), RoomY(pageHeight));
        int columns = (int)Math.Ceiling(width / roomX);
        int rows = (int)Math.Ceiling(height / roomY);
        List<SceneItem> drawing = [.. Drawing(width, height)];
        var pages = new List<Scene>();
        for (int row = 0; row < rows; row++)
        {
            for (int column = 0; column < columns; column++)
            {
                string sheet =
                    columns * rows == 1
                        ? ""
                        : $" Sheet {pages.Count + 1} of {columns * rows}: cut along the grey lines and lay them edge to edge.";
                pages.Add(
                    new Scene(
                        pageWidth,
                        pageHeight,
                        [
                            .. Head(pageWidth, sheet),
                            .. columns * rows == 1
                                ? drawing.Select(i => i.Moved(LeftMm + ((roomX - width) / 2), TopMm + ((roomY - height) / 2)))
                                : Tile(drawing, (roomX, roomY), column, row),
                            .. Rulers(pageHeight),
                        ],
                        []
                    )
                );
            }
        }

        return pages;
    }

    private static double RoomX(double pageWidth) => pageWidth - LeftMm - RightMm;

    private static double RoomY(double pageHeight) => pageHeight - TopMm - BottomMm;

    private static IEnumerable<SceneItem> Tile(List<SceneItem> drawing, (double X, double Y) room, int column, int row)
    {
        string box = Strokes.BoxPath(room.X, room.Y);
        yield return new ClipItem(
            box,
            LeftMm,
            TopMm,
            [.. drawing.Select(i => i.Moved(LeftMm - (column * room.X), TopMm - (row * room.Y)))]
        );
        yield return new PathItem(box, LeftMm, TopMm, 1, null, Ink.Grey, ThinMm);
    }

    // With the floor's upper left corner at the origin.
    private IEnumerable<SceneItem> Drawing(double width, double height)
    {
        yield return floor is RoundFloor round
            ? Circle(new FloorPoint(0, 0), round.RadiusMm, Ink.Black, WallMm)
            : new PathItem(Around((CorneredFloor)floor), 0, 0, 1, null, Ink.Black, WallMm);
        yield return Strokes.Line((width / 2) - 2, height / 2, (width / 2) + 2, height / 2, Ink.Grey, ThinMm);
        yield return Strokes.Line(width / 2, (height / 2) - 2, width / 2, (height / 2) + 2, Ink.Grey, ThinMm);
        for (int i = 0; i < layout.Wicks.Count; i++)
        {
            FloorPoint wick = layout.Wicks[i];
            (double x, double y) = OnPaper(wick);
            yield return Circle(wick, layout.FreeRadius.Value, Ink.Grey, ThinMm);
            yield return Circle(wick, HoleMm, Ink.Black, WallMm);
            yield return Strokes.Line(x - (CrossMm / 2), y, x + (CrossMm / 2), y, Ink.Black, ThinMm * 2);
            yield return Strokes.Line(x, y - (CrossMm / 2), x, y + (CrossMm / 2), Ink.Black, ThinMm * 2);
            yield return Strokes.Text($"{i + 1}", Weight.Bold, x + HoleMm, y - HoleMm - 0.4, NumberMm, Ink.Black);
        }
    }

    private (double X, double Y) OnPaper(FloorPoint at) => (at.XMm - floor.Lowest.XMm, floor.Highest.YMm - at.YMm);

    private PathItem Circle(FloorPoint middle, double radius, Ink ink, double line)
    {
        (double x, double y) = OnPaper(middle);
        string path = FormattableString.Invariant(
            $"M{-radius:0.####} 0 A{radius:0.####} {radius:0.####} 0 1 0 {radius:0.####} 0 A{radius:0.####} {radius:0.####} 0 1 0 {-radius:0.####} 0 Z"
        );
        return new PathItem(path, x, y, 1, null, ink, line);
    }

    private string Around(CorneredFloor cornered) =>
        string.Join(
            ' ',
            cornered.Corners.Select(
                (c, i) => FormattableString.Invariant($"{(i == 0 ? 'M' : 'L')}{OnPaper(c).X:0.####} {OnPaper(c).Y:0.####}")
            )
        ) + " Z";

    private IEnumerable<SceneItem> Head(double pageWidth, string sheet)
    {
        yield return Strokes.Text($"Wick template: {head.Candle}", Weight.Bold, LeftMm, 13, 4.6, Ink.Black);
        double y = 18.5;
        foreach (string line in Lines($"{head.Vessel}; {head.Layout}.{sheet}", pageWidth).Concat(Lines(head.Note, pageWidth)))
        {
            yield return Strokes.Text(line, Weight.Regular, LeftMm, y, TypeMm, Ink.Black);
            y += TypeMm * 1.3;
        }
    }

    private static IEnumerable<string> Lines(string text, double pageWidth)
    {
        string line = "";
        foreach (string word in text.Split(' '))
        {
            string longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && Strokes.Text(longer, Weight.Regular, 0, 0, TypeMm, Ink.Black).WidthMm > RoomX(pageWidth))
            {
                yield return line;
                longer = word;
            }

            line = longer;
        }

        yield return line;
    }

    private static IEnumerable<SceneItem> Rulers(double pageHeight)
    {
        double foot = pageHeight - 15;
        foreach (bool upright in new[] { false, true })
        {
            (double x, double y) = upright ? (14, TopMm) : (LeftMm, foot);
            yield return upright
                ? Strokes.Line(x, y, x, y + TemplateRuler.LengthMm, Ink.Black, ThinMm * 2)
                : Strokes.Line(x, y, x + TemplateRuler.LengthMm, y, Ink.Black, ThinMm * 2);
            for (int mm = 0; mm <= TemplateRuler.LengthMm; mm++)
            {
                double tick = TemplateRuler.Tick(mm);
                yield return upright
                    ? Strokes.Line(x, y + mm, x - tick, y + mm, Ink.Black, ThinMm)
                    : Strokes.Line(x + mm, y, x + mm, y + tick, Ink.Black, ThinMm);
                if (mm % 10 == 0)
                {
                    TextItem figure = Strokes.Text($"{mm}", Weight.Regular, 0, 0, 2.1, Ink.Black);
                    yield return upright
                        ? figure.Moved(x - 3.6 - figure.WidthMm, y + mm + 0.7)
                        : figure.Moved(x + mm - (figure.WidthMm / 2), y + 5.6);
                }
            }
        }

        yield return Strokes.Text(
            "Print at 100 %, not fitted to the page. Before you use it,",
            Weight.Regular,
            LeftMm,
            foot - 5.4,
            TypeMm,
            Ink.Black
        );
        yield return Strokes.Text(
            "lay a ruler on both scales: each must be 100 mm long.",
            Weight.Bold,
            LeftMm,
            foot - 1.6,
            TypeMm,
            Ink.Black
        );
    }
}

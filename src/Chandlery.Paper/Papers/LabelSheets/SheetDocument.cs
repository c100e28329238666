using System.Text;
using Chandlery.Core.Declared;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Papers.LabelSheets;

/// <summary>Puts labels on sheets.</summary>
public static class SheetDocument
{
    private const double MarkMm = 3;
    private const double LeastMarkMm = 0.8;
    private const double MarkGapMm = 1;
    private const double LineMm = 0.1;

    /// <summary>The sheets.</summary>
    /// <param name="title">Title of the PDF.</param>
    /// <param name="language">Language of the PDF.</param>
    /// <param name="labels">Labels in the order of printing.</param>
    /// <param name="stock">The stock; it must be a sheet.</param>
    /// <param name="options">Options.</param>
    public static PaperDocument Make(string title, string language, IReadOnlyList<Scene> labels, Stock stock, SheetOptions options)
    {
        SheetGrid grid = stock.Sheet!;
        var pages = new List<Scene>();
        int perLabel = options.IsDuplex ? 2 : 1;
        int cell = options.Start - 1;
        for (int next = 0; next < labels.Count; )
        {
            int here = Math.Min(grid.Count - cell, (labels.Count - next) / perLabel);
            for (int side = 0; side < perLabel; side++)
            {
                int first = next + side;
                bool isBack = side == 1;
                pages.Add(
                    Sheet(
                        Enumerable.Range(0, here).Select(i => (Cell(grid, cell + i, isBack), labels[first + (i * perLabel)])),
                        stock,
                        options
                    )
                );
            }

            next += here * perLabel;
            cell = 0;
        }

        return new PaperDocument(title, language, pages);
    }

    // On the back of a sheet that is turned over its long edge, the first column is the last.
    private static int Cell(SheetGrid grid, int cell, bool isBack) =>
        isBack ? cell - (cell % grid.Columns) + grid.Columns - 1 - (cell % grid.Columns) : cell;

    private static Scene Sheet(IEnumerable<(int Cell, Scene Label)> labels, Stock stock, SheetOptions options)
    {
        SheetGrid grid = stock.Sheet!;
        var items = new List<SceneItem>();
        var marks = new List<Mark>();
        var cuts = new StringBuilder();
        foreach ((int cell, Scene label) in labels)
        {
            (double x, double y) = Corner(grid, cell, options);
            (double besideMm, double aboveMm) = Gutter(grid, label);
            items.Add(Bled(label, x, y, Math.Min(stock.Bleed.Value, besideMm / 2), Math.Min(stock.Bleed.Value, aboveMm / 2)));
            marks.AddRange(label.Marks.Select(m => m.Moved(x, y)));
            cuts.Append(SkiaPaths.Moved(label.CutPath ?? Strokes.BoxPath(label.WidthMm, label.HeightMm), x, y)).Append(' ');
            if (options.CropMarks)
            {
                items.AddRange(CropMarks(grid, cell, (x, y), label));
            }
        }

        return new Scene(grid.Page.Width.Value, grid.Page.Height.Value, items, marks) { CutPath = cuts.ToString().Trim() };
    }

    // A label's art runs over its edge as far as the stock and half the gutter allow, and no farther.
    private static ClipItem Bled(Scene label, double x, double y, double beside, double above) =>
        new(
            Strokes.BoxPath(label.WidthMm + (2 * beside), label.HeightMm + (2 * above)),
            x - beside,
            y - above,
            [.. label.Items.Select(i => i.Moved(x, y))]
        );

    private static (double BesideMm, double AboveMm) Gutter(SheetGrid grid, Scene label) =>
        (
            grid.Columns == 1 ? double.PositiveInfinity : Math.Max(0, grid.PitchX.Value - label.WidthMm),
            grid.Rows == 1 ? double.PositiveInfinity : Math.Max(0, grid.PitchY.Value - label.HeightMm)
        );

    /// <summary>A page to lay over the stock against the light: every label's outline, and rulers to read the printer's offset from.</summary>
    public static PaperDocument Calibration(Stock stock, SheetOptions options)
    {
        SheetGrid grid = stock.Sheet!;
        var items = new List<SceneItem>();
        var shape = new Shapes.LabelShape(stock.Label, "");
        for (int cell = 0; cell < grid.Count; cell++)
        {
            (double x, double y) = Corner(grid, cell, options);
            string outline = shape.Outline();
            string path = outline.Length > 0 ? outline : Strokes.BoxPath(shape.WidthMm, shape.HeightMm);
            items.Add(new PathItem(path, x, y, 1, null, Ink.Black, LineMm));
            items.Add(Text($"{cell + 1}", x + (shape.WidthMm / 2), y + (shape.HeightMm / 2), 4));
        }

        (double firstX, double firstY) = Corner(grid, 0, options);
        items.AddRange(Cross(firstX, firstY));
        items.Add(
            Text(
                "Print at 100 %. Hold it against a sheet of labels: where the cross stands right of and below the corner, that many millimetres go into --offset-x and --offset-y with a minus.",
                8,
                Math.Max(6, firstY - 6),
                2.4
            )
        );
        return new PaperDocument($"Calibration: {stock.Name}", "en", [new Scene(grid.Page.Width.Value, grid.Page.Height.Value, items, [])]);
    }

    private static (double X, double Y) Corner(SheetGrid grid, int cell, SheetOptions options) =>
        (
            grid.Left.Value + (cell % grid.Columns * grid.PitchX.Value) + options.OffsetX.Value,
            grid.Top.Value + (cell / grid.Columns * grid.PitchY.Value) + options.OffsetY.Value
        );

    // Marks stand in the gutter alone: between labels they are as long as half of it allows, and left out where it is narrower.
    private static IEnumerable<SceneItem> CropMarks(SheetGrid grid, int cell, (double X, double Y) corner, Scene label)
    {
        (double beside, double above) = Gutter(grid, label);
        (int column, int row) = (cell % grid.Columns, cell / grid.Columns);
        double left = MarkLength(column == 0 ? corner.X : beside / 2);
        double right = MarkLength(column == grid.Columns - 1 ? grid.Page.Width.Value - corner.X - label.WidthMm : beside / 2);
        double top = MarkLength(row == 0 ? corner.Y : above / 2);
        double bottom = MarkLength(row == grid.Rows - 1 ? grid.Page.Height.Value - corner.Y - label.HeightMm : above / 2);
        double endX = corner.X + label.WidthMm;
        double endY = corner.Y + label.HeightMm;
        foreach (double x in new[] { corner.X, endX })
        {
            if (top > 0)
            {
                yield return Line(x, corner.Y - MarkGapMm - top, x, corner.Y - MarkGapMm);
            }

            if (bottom > 0)
            {
                yield return Line(x, endY + MarkGapMm, x, endY + MarkGapMm + bottom);
            }
        }

        foreach (double y in new[] { corner.Y, endY })
        {
            if (left > 0)
            {
                yield return Line(corner.X - MarkGapMm - left, y, corner.X - MarkGapMm, y);
            }

            if (right > 0)
            {
                yield return Line(endX + MarkGapMm, y, endX + MarkGapMm + right, y);
            }
        }
    }

    private static double MarkLength(double roomMm) => roomMm - MarkGapMm < LeastMarkMm ? 0 : Math.Min(MarkMm, roomMm - MarkGapMm);

    // A cross with ticks every millimetre.
    private static IEnumerable<SceneItem> Cross(double x, double y)
    {
        yield return Line(x - 10, y, x + 10, y);
        yield return Line(x, y - 10, x, y + 10);
        for (int mm = -10; mm <= 10; mm++)
        {
            double tick = mm % 5 == 0 ? 1.2 : 0.6;
            yield return Line(x + mm, y - tick, x + mm, y + tick);
            yield return Line(x - tick, y + mm, x + tick, y + mm);
        }
    }

    private static PathItem Line(double x1, double y1, double x2, double y2) => Strokes.Line(x1, y1, x2, y2, Ink.Black, LineMm);

    private static TextItem Text(string text, double x, double y, double size) => Strokes.Text(text, Weight.Regular, x, y, size, Ink.Black);
}

using Chandlery.Core.Declared;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Papers.LabelSheets;

/// <summary>Puts labels on sheets.</summary>
public static class SheetDocument
{
    private const double MarkMm = 3;
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
        int cell = options.Start - 1;
        int next = 0;
        while (next < labels.Count)
        {
            var items = new List<SceneItem>();
            var marks = new List<Mark>();
            for (; cell < grid.Count && next < labels.Count; cell++, next++)
            {
                (double x, double y) = Corner(grid, cell, options);
                Scene label = labels[next];
                items.AddRange(label.Items.Select(i => i.Moved(x, y)));
                marks.AddRange(label.Marks.Select(m => m with { XMm = m.XMm + x, YMm = m.YMm + y }));
                if (options.CropMarks)
                {
                    items.AddRange(CropMarks(x, y, label.WidthMm, label.HeightMm));
                }
            }

            pages.Add(new Scene(grid.Page.Width.Value, grid.Page.Height.Value, items, marks));
            cell = 0;
        }

        return new PaperDocument(title, language, pages);
    }

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

    private static IEnumerable<SceneItem> CropMarks(double x, double y, double width, double height)
    {
        foreach (double edgeX in new[] { x, x + width })
        {
            yield return Line(edgeX, y - MarkGapMm - MarkMm, edgeX, y - MarkGapMm);
            yield return Line(edgeX, y + height + MarkGapMm, edgeX, y + height + MarkGapMm + MarkMm);
        }

        foreach (double edgeY in new[] { y, y + height })
        {
            yield return Line(x - MarkGapMm - MarkMm, edgeY, x - MarkGapMm, edgeY);
            yield return Line(x + width + MarkGapMm, edgeY, x + width + MarkGapMm + MarkMm, edgeY);
        }
    }

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

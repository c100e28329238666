using Chandlery.Core.Law;
using Chandlery.Core.Quantities;
using Chandlery.Paper.Layout;
using Chandlery.Paper.Markup;
using Chandlery.Paper.Scenes;
using Chandlery.Paper.Shapes;
using Chandlery.Paper.Symbols;

namespace Chandlery.Paper.Papers.Labels;

/// <summary>
/// Finds the arrangement with the largest text that fits a shape, never below what the law allows; of several with the same size
/// the most even one.
/// </summary>
internal sealed class LabelFitter(SymbolSheet symbols, LabelFormat format, SizeBand band)
{
    // Larger than this times the least height, text on a label only looks clumsy.
    private const double LargestOfLeast = 1.5;
    private const double StepMm = 0.01;
    private const double OutlineMm = 0.15;

    // Narrower columns than so many type sizes are ladders of single words.
    private const double NarrowestColumnEm = 14;
    private const double ColumnGapEm = 1.8;
    private const int MostColumns = 5;
    private const double TornWorth = 0.06;

    /// <summary>Whether a document fits a shape at the least sizes.</summary>
    /// <param name="document">The text.</param>
    /// <param name="shape">The shape.</param>
    /// <param name="ofLeast">How much larger than the least the letters are to be.</param>
    public bool Holds(MarkupDocument document, LabelShape shape, double ofLeast = 1) =>
        WaysOf(document, shape).Any(w => Try(document, shape, w, band.XHeight.Value * ofLeast, band.Pictogram.Value) is not null);

    /// <summary>Fits a document into a shape; null when it does not fit at the least sizes.</summary>
    public FittedPage? TryFit(MarkupDocument document, LabelShape shape)
    {
        List<ColumnPlanner?> ways = [.. WaysOf(document, shape)];
        foreach (double pictogram in PictogramSides(shape))
        {
            Setting? best = null;
            foreach (ColumnPlanner? columns in ways)
            {
                if (Largest(document, shape, columns, pictogram, best) is { } found && IsBetter(found, best))
                {
                    best = found;
                }
            }

            if (best is not null)
            {
                return Place(document, shape, best);
            }
        }

        return null;
    }

    /// <summary>What a shape lacks at the least sizes that the law allows; round shapes are measured as their rectangle.</summary>
    public (Millimetres Height, Millimetres Width) Missing(MarkupDocument document, LabelShape shape)
    {
        LayoutResult layout = FlowLayout.Measure(
            document.Blocks,
            shape.Room(document.MarginMm, endless: true),
            Sizes(band.XHeight.Value, band.Pictogram.Value),
            symbols
        );
        double room = shape.HeightMm - shape.InsetMm(document.MarginMm);
        return (new Millimetres(Math.Max(0, layout.EndMm - room)), new Millimetres(Math.Max(0, layout.OverflowMm)));
    }

    // From the largest side to the least that the law allows.
    private IEnumerable<double> PictogramSides(LabelShape shape)
    {
        double least = band.Pictogram.Value;
        double ifPossible = band.PictogramIfPossible.Value;
        double share = Math.Floor(Math.Sqrt(shape.AreaMm2 / format.PanelToPictogram) * 10) / 10;
        return new[] { share, ifPossible, least }.Where(s => s >= least).OrderDescending().Distinct();
    }

    // One flow first, which is null, then columns: even ones, and ones of which the first is just as wide as the pictograms need.
    private IEnumerable<ColumnPlanner?> WaysOf(MarkupDocument document, LabelShape shape)
    {
        yield return null;
        if (!shape.IsRectangular)
        {
            yield break;
        }

        IReadOnlyList<int> starts = ColumnPlanner.StartsOf(document.Blocks);
        (double top, double bottom) = Height(document, shape);
        double typeSize = Sizes(band.XHeight.Value, 0).TypeSizeMm;
        double gap = ColumnGapEm * typeSize;
        double margin = shape.InsetMm(document.MarginMm);
        double room = shape.WidthMm - (2 * margin);
        for (int count = 2; count <= MostColumns; count++)
        {
            double width = (room - (gap * (count - 1))) / count;
            if (width < NarrowestColumnEm * typeSize)
            {
                break;
            }

            yield return Planner(Columns(margin, width, width, gap, count));
            double first = Math.Max(NarrowestColumnEm * typeSize, PictogramSides(shape).First() * Math.Sqrt(2) + 1);
            if (first < width * 0.9)
            {
                yield return Planner(Columns(margin, first, (room - first - (gap * (count - 1))) / (count - 1), gap, count));
            }
        }

        ColumnPlanner Planner(List<(double Left, double Right)> edges) => new(document.Blocks, starts, bottom - top, edges, symbols);
    }

    private static List<(double Left, double Right)> Columns(double margin, double first, double others, double gap, int count)
    {
        var columns = new List<(double, double)> { (margin, margin + first) };
        for (int i = 1; i < count; i++)
        {
            double left = margin + first + gap + ((i - 1) * (others + gap));
            columns.Add((left, left + others));
        }

        return columns;
    }

    // The least height fits and each step up may not: halve the interval. What cannot beat the best so far is not looked at.
    private Setting? Largest(MarkupDocument document, LabelShape shape, ColumnPlanner? columns, double pictogram, Setting? best)
    {
        double least = band.XHeight.Value;
        int low = best is null ? 0 : Math.Max(0, (int)Math.Ceiling((Worth(best) - least) / StepMm));
        if (Try(document, shape, columns, least + (low * StepMm), pictogram) is not { } found)
        {
            return null;
        }

        int high = (int)Math.Round(least * (LargestOfLeast - 1) / StepMm);
        while (low < high)
        {
            int middle = (low + high + 1) / 2;
            if (Try(document, shape, columns, least + (middle * StepMm), pictogram) is { } larger)
            {
                found = larger;
                low = middle;
            }
            else
            {
                high = middle - 1;
            }
        }

        return found;
    }

    private static bool IsBetter(Setting found, Setting? best) =>
        best is null
        || Worth(found) > Worth(best) + (StepMm / 2)
        || (Worth(found) > Worth(best) - (StepMm / 2) && found.Unevenness < best.Unevenness);

    // The largest text wins; a text that is torn over two columns is as bad as letters a few percent smaller.
    private static double Worth(Setting setting) => setting.XHeightMm * (1 - (TornWorth * (setting.Plan?.Torn ?? 0)));

    private Setting? Try(MarkupDocument document, LabelShape shape, ColumnPlanner? columns, double xHeight, double pictogram)
    {
        LayoutSizes sizes = Sizes(xHeight, pictogram);
        if (columns is null)
        {
            Region room = shape.Room(document.MarginMm);
            LayoutResult layout = FlowLayout.Measure(document.Blocks, room, sizes, symbols);
            double left = (room.BottomMm - layout.EndMm) / shape.HeightMm;
            return layout.EndMm <= room.BottomMm && layout.OverflowMm <= 0 ? new Setting(xHeight, pictogram, null, left * left) : null;
        }

        return columns.Plan(sizes) is { } plan ? new Setting(xHeight, pictogram, plan, plan.Unevenness) : null;
    }

    private FittedPage Place(MarkupDocument document, LabelShape shape, Setting setting)
    {
        LayoutSizes sizes = Sizes(setting.XHeightMm, setting.PictogramMm);
        LayoutResult layout = setting.Plan is { } plan
            ? ColumnPlanner.Place(document.Blocks, plan, Height(document, shape), sizes, symbols)
            : FlowLayout.LayLoosely(document.Blocks, () => shape.Room(document.MarginMm), sizes, symbols);
        string outline = shape.Outline();
        IEnumerable<SceneItem> edge = outline.Length == 0 ? [] : [new PathItem(outline, 0, 0, 1, null, Ink.Grey, OutlineMm)];
        var scene = new Scene(shape.WidthMm, shape.HeightMm, [.. edge, .. layout.Items], layout.Marks)
        {
            CutPath = outline.Length == 0 ? null : outline,
        };
        return new FittedPage(scene, new Millimetres(setting.XHeightMm), new Millimetres(setting.PictogramMm));
    }

    private static (double Top, double Bottom) Height(MarkupDocument document, LabelShape shape) =>
        (shape.InsetMm(document.MarginMm), shape.HeightMm - shape.InsetMm(document.MarginMm));

    private LayoutSizes Sizes(double xHeight, double pictogram) => new(xHeight, format.LineSpacing, pictogram);
}

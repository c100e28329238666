using Chandlery.Core.Law;
using Chandlery.Core.Quantities;
using Chandlery.Paper.Layout;
using Chandlery.Paper.Markup;
using Chandlery.Paper.Scenes;
using Chandlery.Paper.Shapes;
using Chandlery.Paper.Symbols;

namespace Chandlery.Paper.Papers.Labels;

/// <summary>Finds the largest text that fits a shape, never below what the law allows.</summary>
internal sealed class LabelFitter(SymbolSheet symbols, LabelFormat format, SizeBand band)
{
    // Larger than this times the least height, text on a label only looks clumsy.
    private const double LargestOfLeast = 1.5;
    private const double StepMm = 0.01;
    private const double OutlineMm = 0.15;

    /// <summary>Whether a document fits a shape at the least sizes.</summary>
    public bool Holds(MarkupDocument document, LabelShape shape) => Fits(document, shape, band.XHeight.Value, band.Pictogram.Value);

    /// <summary>Fits a document into a shape; null when it does not fit at the least sizes.</summary>
    public FittedPage? TryFit(MarkupDocument document, LabelShape shape)
    {
        foreach (Millimetres pictogram in new[] { band.PictogramIfPossible, band.Pictogram }.Distinct())
        {
            double least = band.XHeight.Value;
            if (!Fits(document, shape, least, pictogram.Value))
            {
                continue;
            }

            // The least height fits and each step up may not: halve the interval.
            int low = 0;
            int high = (int)Math.Round(least * (LargestOfLeast - 1) / StepMm);
            while (low < high)
            {
                int middle = (low + high + 1) / 2;
                if (Fits(document, shape, least + (middle * StepMm), pictogram.Value))
                {
                    low = middle;
                }
                else
                {
                    high = middle - 1;
                }
            }

            double xHeight = least + (low * StepMm);
            LayoutResult layout = FlowLayout.Lay(document.Blocks, shape.Room(document.MarginMm), Sizes(xHeight, pictogram.Value), symbols);
            string outline = shape.Outline();
            IEnumerable<SceneItem> edge = outline.Length == 0 ? [] : [new PathItem(outline, 0, 0, 1, null, Ink.Grey, OutlineMm)];
            var scene = new Scene(shape.WidthMm, shape.HeightMm, [.. edge, .. layout.Items], layout.Marks);
            return new FittedPage(scene, new Millimetres(xHeight), pictogram);
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
        double room = shape.HeightMm - document.MarginMm;
        return (new Millimetres(Math.Max(0, layout.EndMm - room)), new Millimetres(Math.Max(0, layout.OverflowMm)));
    }

    private bool Fits(MarkupDocument document, LabelShape shape, double xHeight, double pictogram)
    {
        Region room = shape.Room(document.MarginMm);
        LayoutResult layout = FlowLayout.Measure(document.Blocks, room, Sizes(xHeight, pictogram), symbols);
        return layout.EndMm <= room.BottomMm && layout.OverflowMm <= 0;
    }

    private LayoutSizes Sizes(double xHeight, double pictogram) => new(xHeight, format.LineSpacing, pictogram);
}

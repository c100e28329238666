using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;
using Chandlery.Paper.Layout;
using Chandlery.Paper.Markup;
using Chandlery.Paper.Scenes;
using Chandlery.Paper.Symbols;

namespace Chandlery.Paper.Documents;

/// <summary>A label that fits.</summary>
/// <param name="Scene">The label.</param>
/// <param name="Size">Its size.</param>
/// <param name="XHeight">Height of a lower-case x of its text.</param>
/// <param name="Pictogram">Side of its pictograms.</param>
/// <param name="Band">The sizes that the law asks for.</param>
public sealed record FittedLabel(Scene Scene, LabelSize Size, Millimetres XHeight, Millimetres Pictogram, SizeBand Band);

/// <summary>A label whose text does not fit at the least sizes that the law allows.</summary>
/// <param name="Size">The size that was tried.</param>
/// <param name="MissingHeight">How much taller it would have to be.</param>
/// <param name="MissingWidth">How much wider it would have to be for its longest word; zero when that is not the trouble.</param>
/// <param name="Remedies">What would help, best first.</param>
public sealed record Misfit(LabelSize Size, Millimetres MissingHeight, Millimetres MissingWidth, IReadOnlyList<string> Remedies);

/// <summary>Finds the largest text that fits a label, never below what the law allows.</summary>
internal sealed class LabelFitter(SymbolSheet symbols, LabelFormat format, SizeBand band)
{
    // Larger than this times the least height, text on a label only looks clumsy.
    private const double LargestOfLeast = 1.5;
    private const double StepMm = 0.01;

    /// <summary>Fits a document into a size, or says what is missing.</summary>
    public FittedLabel? TryFit(MarkupDocument document, LabelSize size)
    {
        foreach (Millimetres pictogram in new[] { band.PictogramIfPossible, band.Pictogram }.Distinct())
        {
            double least = band.XHeight.Value;
            if (Lay(document, size, least, pictogram.Value) is null)
            {
                continue;
            }

            // The least height fits and each step up may not: halve the interval.
            int low = 0;
            int high = (int)Math.Round(least * (LargestOfLeast - 1) / StepMm);
            while (low < high)
            {
                int middle = (low + high + 1) / 2;
                if (Lay(document, size, least + (middle * StepMm), pictogram.Value) is null)
                {
                    high = middle - 1;
                }
                else
                {
                    low = middle;
                }
            }

            double xHeight = least + (low * StepMm);
            LayoutResult layout = Lay(document, size, xHeight, pictogram.Value)!;
            var scene = new Scene(size.Width.Value, size.Height.Value, layout.Items, layout.Marks);
            return new FittedLabel(scene, size, new Millimetres(xHeight), pictogram, band);
        }

        return null;
    }

    /// <summary>What a size lacks at the least sizes that the law allows.</summary>
    public (Millimetres Height, Millimetres Width) Missing(MarkupDocument document, LabelSize size)
    {
        LayoutResult layout = Measure(document, size, double.PositiveInfinity, band.XHeight.Value, band.Pictogram.Value);
        double room = size.Height.Value - document.MarginMm;
        return (new Millimetres(Math.Max(0, layout.EndMm - room)), new Millimetres(Math.Max(0, layout.OverflowMm)));
    }

    private LayoutResult? Lay(MarkupDocument document, LabelSize size, double xHeight, double pictogram)
    {
        double bottom = size.Height.Value - document.MarginMm;
        LayoutResult layout = Measure(document, size, bottom, xHeight, pictogram);
        return layout.EndMm <= bottom && layout.OverflowMm <= 0 ? layout : null;
    }

    private LayoutResult Measure(MarkupDocument document, LabelSize size, double bottom, double xHeight, double pictogram)
    {
        double margin = document.MarginMm;
        var region = Region.Rectangle(margin, margin, size.Width.Value - margin, bottom);
        return FlowLayout.Lay(document.Blocks, region, new LayoutSizes(xHeight, format.LineSpacing, pictogram), symbols);
    }
}

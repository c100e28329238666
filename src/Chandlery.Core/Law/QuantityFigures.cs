using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>Height of the figures of the nominal quantity.</summary>
/// <param name="Clause">Where it stands.</param>
/// <param name="Bands">Bands, smallest first.</param>
/// <param name="PanelShareOfSide">The fraction of a vessel's side that counts as its main panel, for bands by area.</param>
public sealed record QuantityFigures(Citation Clause, IReadOnlyList<FigureBand> Bands, double PanelShareOfSide)
{
    private const double SquareMmPerSquareInch = 25.4 * 25.4;
    private const double SquareMmPerSquareCentimetre = 10 * 10;

    /// <summary>
    /// The least height for the nominal quantity of a product in this vessel. The bands in grams hold in millilitres too; the data
    /// says where that stands.
    /// </summary>
    public Millimetres HeightFor(Candle candle, Vessel vessel) =>
        HeightFor(new Grams(candle.NetVolume?.Value ?? candle.NetMass.Value), vessel);

    /// <summary>The least height for this quantity in this vessel.</summary>
    public Millimetres HeightFor(Grams quantity, Vessel vessel)
    {
        // A vessel of unknown size gets the tallest figures: the stricter side.
        double area = vessel.Outer is { } side
            ? PanelShareOfSide * side.Height.Value * side.Section.Perimeter.Value
            : double.PositiveInfinity;
        double largest = vessel.Outer is { } outer
            ? Math.Max(outer.Height.Value, outer.Section.LongestAcross.Value)
            : double.PositiveInfinity;
        double Measured(FigureMeasure measure) =>
            measure switch
            {
                FigureMeasure.SquareInches => area / SquareMmPerSquareInch,
                FigureMeasure.SquareCentimetres => area / SquareMmPerSquareCentimetre,
                FigureMeasure.LargestMm => largest,
                _ => quantity.Value,
            };

        return Bands.First(b => b.UpTo is null || Measured(b.Measure) <= b.UpTo).Height;
    }
}

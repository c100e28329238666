using Chandlery.Core.Declared;
using Chandlery.Paper.Designs;

namespace Chandlery.Paper.Papers.Labels;

/// <summary>
/// A strip over the lid, laid flat: down the far side, over the lid, down the near side. What the law asks for stands whole on one face;
/// the far side is never that face, since it stands on its head there.
/// </summary>
/// <param name="Length">Length of the strip, millimetres.</param>
/// <param name="Lid">The lid's part that is a whole rectangle.</param>
/// <param name="Near">The near side, less what bends round the rim.</param>
internal sealed record StripFaces(double Length, Box Lid, Box Near)
{
    // What a fold takes on either side of it (common practice, no source).
    private const double FoldMm = 1;

    /// <summary>The faces of a strip on a vessel; null where it hangs lower than the vessel stands, or the lid has no such rectangle.</summary>
    /// <param name="widthMm">Width of the strip.</param>
    /// <param name="dropMm">How far it comes down on each side.</param>
    /// <param name="outer">Outer size of the vessel.</param>
    public static StripFaces? Of(double widthMm, double dropMm, VesselSize outer)
    {
        (double over, double whole) = outer.Section switch
        {
            // Beside its middle a strip over a round lid reaches the rim sooner, and hangs lower by as much.
            RoundSection round when round.Diameter.Value > widthMm => (
                round.Diameter.Value,
                Math.Sqrt((round.Diameter.Value * round.Diameter.Value) - (widthMm * widthMm))
            ),
            RectangularSection sides when sides.Length.Value >= widthMm => (sides.Width.Value, sides.Width.Value),
            _ => (0, 0),
        };
        double lid = whole - (2 * FoldMm);
        double near = dropMm - FoldMm;
        return lid <= 0 || near <= 0 || dropMm + ((over - whole) / 2) > outer.Height.Value
            ? null
            : new StripFaces(
                over + (2 * dropMm),
                new Box(0, dropMm + ((over - lid) / 2), widthMm, lid),
                new Box(0, over + (2 * dropMm) - near, widthMm, near)
            );
    }
}

using System.Diagnostics;
using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;

namespace Chandlery.Paper.Shapes;

/// <summary>What fits where on a vessel.</summary>
public static class Arrangements
{
    // Room that labels keep from rims, edges and seams; common practice, no source.
    private const double EdgeMm = 1;
    private const double OverlapMm = 5;

    /// <summary>A rectangle may take this share of a round vessel's girth and still be read without turning it.</summary>
    private const double ReadableShareOfGirth = 0.45;

    /// <summary>A label of a size.</summary>
    public static LabelShape Rectangle(LabelSize size, string where) =>
        new(new LabelRequest(LabelForm.Rectangle, size, new Millimetres(0), new Millimetres(0)), where);

    /// <summary>The label that the maker asks for; a band gets its length from the vessel.</summary>
    public static LabelShape Asked(LabelRequest request, Vessel vessel)
    {
        if (request.Form == LabelForm.Band && vessel.Outer is { } outer)
        {
            var size = new LabelSize(new Millimetres(outer.Section.Perimeter.Value + OverlapMm), request.Size.Height);
            return new LabelShape(request with { Size = size }, "around the vessel");
        }

        return new LabelShape(request, "as asked for");
    }

    /// <summary>
    /// Everything that can carry a label, smallest first: rectangles on the side, the base, a band, and last a leaflet.
    /// A vessel of unknown size is not looked at: then only the offered rectangles count.
    /// </summary>
    public static IReadOnlyList<LabelShape> For(Vessel vessel, IReadOnlyList<LabelSize> offered)
    {
        if (vessel.Outer is not { } outer)
        {
            return [.. offered.Select(s => Rectangle(s, "where there is room")).OrderBy(s => s.AreaMm2)];
        }

        double girth = outer.Section.Perimeter.Value;
        double height = outer.Height.Value - (2 * EdgeMm);
        double widest = outer.Section is RectangularSection sides ? sides.LongSide.Value - (2 * EdgeMm) : girth * ReadableShareOfGirth;
        var shapes = new List<LabelShape>();
        shapes.AddRange(offered.Where(s => s.Width.Value <= widest && s.Height.Value <= height).Select(s => Rectangle(s, "on the side")));
        shapes.AddRange(OnTheBase(outer.Section, offered));
        if (height > 10)
        {
            var band = new LabelSize(new Millimetres(girth + OverlapMm), new Millimetres(height));
            shapes.Add(new LabelShape(new LabelRequest(LabelForm.Band, band, new Millimetres(0), new Millimetres(0)), "around the vessel"));
        }

        shapes.AddRange(
            offered.Select(s => new LabelShape(
                new LabelRequest(LabelForm.Leaflet, s, new Millimetres(0), new Millimetres(0)),
                "as a leaflet or tie-on tag"
            ))
        );
        return [.. shapes.OrderBy(s => s.Request.Form == LabelForm.Leaflet).ThenBy(s => s.AreaMm2)];
    }

    private static IEnumerable<LabelShape> OnTheBase(CrossSection section, IReadOnlyList<LabelSize> offered)
    {
        switch (section)
        {
            case RoundSection round:
                var across = new Millimetres(round.Diameter.Value - (2 * EdgeMm));
                var circle = new LabelSize(across, across);
                return
                [
                    new LabelShape(
                        new LabelRequest(LabelForm.Circle, circle, new Millimetres(0), new Millimetres(0)),
                        LabelShape.OnTheBase
                    ),
                ];
            case RectangularSection sides:
                double length = sides.Length.Value - (2 * EdgeMm);
                double width = sides.Width.Value - (2 * EdgeMm);
                return offered
                    .Where(s => s.Width.Value <= length && s.Height.Value <= width)
                    .Select(s => Rectangle(s, LabelShape.OnTheBase));
            default:
                throw new UnreachableException();
        }
    }
}

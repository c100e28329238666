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
            var size = new LabelSize(new Millimetres(outer.PerimeterMillimetres + OverlapMm), request.Size.Height);
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

        double girth = outer.PerimeterMillimetres;
        double height = outer.Height.Value - (2 * EdgeMm);
        double widest = outer.Diameter is not null
            ? girth * ReadableShareOfGirth
            : Math.Max(outer.Length!.Value.Value, outer.Width!.Value.Value) - (2 * EdgeMm);
        var shapes = new List<LabelShape>();
        shapes.AddRange(offered.Where(s => s.Width.Value <= widest && s.Height.Value <= height).Select(s => Rectangle(s, "on the side")));
        if (outer.Diameter is { } diameter)
        {
            var round = new Millimetres(diameter.Value - (2 * EdgeMm));
            shapes.Add(
                new LabelShape(
                    new LabelRequest(LabelForm.Circle, new LabelSize(round, round), new Millimetres(0), new Millimetres(0)),
                    "on the base"
                )
            );
        }
        else
        {
            double length = outer.Length!.Value.Value - (2 * EdgeMm);
            double width = outer.Width!.Value.Value - (2 * EdgeMm);
            shapes.AddRange(
                offered.Where(s => s.Width.Value <= length && s.Height.Value <= width).Select(s => Rectangle(s, "on the base"))
            );
        }

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
}

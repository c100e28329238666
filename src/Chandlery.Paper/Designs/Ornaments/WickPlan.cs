using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Designs.Ornaments;

/// <summary>The vessel seen from above: its wicks as dots, and rings of warmth around them, two for each percent of load.</summary>
internal sealed class WickPlan : IOrnament
{
    private const int FewestRings = 7;
    private const int MostRings = 18;
    private const int Grid = 120;

    // How far the warmth of a wick is flattened, in radii of the vessel: an even hill instead of a spike.
    private const double Softness = 0.16;

    private static readonly Ink[] OwnRamp =
    [
        Ink.Of("#1B0F14"),
        Ink.Of("#5A1722"),
        Ink.Of("#B5361F"),
        Ink.Of("#EC7A26"),
        Ink.Of("#FBC766"),
        Ink.Of("#FFF3D2"),
    ];

    /// <inheritdoc/>
    public string Kind => "wick-plan";

    /// <inheritdoc/>
    public IEnumerable<SceneItem> Draw(OrnamentRequest request)
    {
        Box room = request.Room;
        IReadOnlyList<(double X, double Y)> wicks = WickPlaces.Of(Math.Max(1, request.Facts.Wicks));
        double ratio = request.Facts.VesselIsRound ? 1 : Math.Clamp(request.Facts.VesselRatio, 1, 1.6);

        // An oblong vessel lies on its long side, and its short side is what is left of the room then.
        double radius = Math.Min(room.Width / ratio, room.Height) / 2;
        (double cx, double cy) = (room.CentreX, room.CentreY);
        double Warmth(double x, double y) =>
            wicks.Sum(w => 1 / (((x - w.X) * (x - w.X)) + ((y - w.Y) * (y - w.Y)) + (Softness * Softness)));

        double edge = Enumerable.Range(0, 60).Average(i => Warmth(0.98 * Math.Cos(i * Math.PI / 30), 0.98 * Math.Sin(i * Math.PI / 30)));
        double top = wicks.Average(w => Warmth(w.X, w.Y));
        int rings = Math.Clamp((int)Math.Round(request.Facts.LoadPercent * 2), FewestRings, MostRings);
        Pen wall = request.Facts.VesselIsRound
            ? new Pen().Circle(cx, cy, radius)
            : new Pen().Box(cx - (radius * ratio), cy - radius, 2 * radius * ratio, 2 * radius);
        var inside = new List<SceneItem>();
        for (int i = 1; i <= rings; i++)
        {
            // Even steps of distance rather than of warmth, or all rings would crowd around the wicks.
            double way = (double)i / (rings + 1);
            double level = 1 / Math.Pow((1 / Math.Sqrt(edge) * (1 - way)) + (1 / Math.Sqrt(top) * way), 2);
            Pen? area = Contours.Of(Warmth, level, Grid, 1.25, (x, y) => (cx + (x * radius * ratio), cy + (y * radius)));
            if (area is null)
            {
                continue;
            }

            inside.Add(
                request.Inks.IsOneInk
                    ? Shading.Stroke(area, request.Inks.Deep(Ink.Black), 0.15 + ((wicks.Count > 4 ? 0.15 : 0.4) * way))
                    : Shading.Fill(area, At(request, way))
            );
        }

        Ink ground = request.Inks.IsOneInk ? request.Inks.Paper : request.Inks.Deep(OwnRamp[0]);
        Ink line = request.Inks.IsOneInk ? request.Inks.Deep(Ink.Black) : At(request, 0.5);
        yield return Shading.Fill(wall, request.Inks.IsOneInk ? ground : ground.Towards(At(request, 0.2), 0.25));
        yield return new ClipItem(wall.ToString(), 0, 0, inside);
        yield return Shading.Stroke(wall, line, request.Inks.IsOneInk ? 0.6 : 0.35);
        double dot = Math.Clamp(radius * 0.022, 0.35, 0.9);
        foreach ((double x, double y) in wicks)
        {
            yield return Shading.Fill(
                new Pen().Circle(cx + (x * radius * ratio), cy + (y * radius), dot),
                request.Inks.IsOneInk ? line : OwnRamp[0]
            );
        }
    }

    private static Ink At(OrnamentRequest request, double way)
    {
        Ink[] ramp = [.. OwnRamp];
        ramp[0] = request.Inks.Deep(OwnRamp[0]);
        ramp[3] = request.Inks.Accent(OwnRamp[3]);
        double place = Math.Clamp(way, 0, 1) * (ramp.Length - 1);
        int step = Math.Min(ramp.Length - 2, (int)place);
        return ramp[step].Towards(ramp[step + 1], place - step);
    }
}

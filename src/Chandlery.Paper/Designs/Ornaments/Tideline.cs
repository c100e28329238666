using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Designs.Ornaments;

/// <summary>
/// A chart of a sea: an island for each oil, as large as its share, with rings of height; lines of depth that bend round the islands
/// and run out on a shore. Its room ends where the shore lies.
/// </summary>
internal sealed class Tideline : IOrnament
{
    private const int Depths = 7;
    private const int Across = 30;
    private const double LandShare = 0.36;
    private const double SwellMm = 1.9;
    private const double BelowMm = 150;
    private const double PercentOfRing = 2.5;
    private const double PercentOfOneOilsRing = 5;

    private static readonly Ink OwnDeep = Ink.Of("#14394A") with { Process = new Cmyk(75, 25, 0, 70) };
    private static readonly Ink OwnShallow = Ink.Of("#A9C3C4");
    private static readonly Ink OwnSand = Ink.Of("#F3E9D6");

    /// <inheritdoc/>
    public string Kind => "tideline";

    /// <summary>Percent of the blend that a ring of height stands for.</summary>
    public static double RingPercent(int oils) => oils == 1 ? PercentOfOneOilsRing : PercentOfRing;

    /// <inheritdoc/>
    public IEnumerable<SceneItem> Draw(OrnamentRequest request)
    {
        List<Island> islands = Settle(request.Facts.Parts, request.Room);
        var swell = new Seed(request.Facts.Name);
        double phase = swell.Between(0, 2 * Math.PI);
        double other = swell.Between(0, 2 * Math.PI);
        double Shore(double x)
        {
            double way = 2 * Math.PI * (x - request.Room.X) / request.Room.Width;
            return request.Room.Bottom + (SwellMm * Math.Sin((way * 1.3) + phase)) + (SwellMm * 0.55 * Math.Sin((way * 2.7) + other));
        }

        return request.Inks.IsOneInk ? Lines(request, islands, Shore) : Areas(request, islands, Shore);
    }

    private static IEnumerable<SceneItem> Areas(OrnamentRequest request, List<Island> islands, Func<double, double> shore)
    {
        Box room = request.Room;
        Ink deep = request.Inks.Deep(OwnDeep);
        Ink shallow = request.Inks.Accent(OwnShallow);
        Ink sand = request.Inks.Light(OwnSand);
        double beyond = request.BeyondMm;
        Pen sea = new Pen().Box(room.X - beyond, room.Y - beyond, room.Width + (2 * beyond), room.Height + beyond + (3 * SwellMm));
        yield return Shading.Fill(sea, deep);
        for (int depth = Depths - 1; depth >= 1; depth--)
        {
            Ink ink = deep.Towards(shallow, Math.Pow((double)(Depths - depth) / (Depths - 1), 1.15));
            yield return Shading.Fill(Below(room, Contour(request, islands, shore, Level(room, depth))), ink);
        }

        yield return Shading.Fill(Below(room, Contour(request, [], shore, 0)), sand);
        foreach (Island island in islands)
        {
            int rings = Rings(island, islands.Count);
            for (int i = 0; i < rings; i++)
            {
                double height = (double)i / Math.Max(1, rings - 1);
                Ink ink =
                    height < 0.5
                        ? island.Part.Ink.Towards(deep, 0.62 * (1 - (2 * height)))
                        : island.Part.Ink.Towards(Ink.White, 0.55 * ((2 * height) - 1));
                yield return Shading.Fill(island.Ring(1 - ((double)i / rings)), ink);
            }
        }
    }

    private static IEnumerable<SceneItem> Lines(OrnamentRequest request, List<Island> islands, Func<double, double> shore)
    {
        Box room = request.Room;
        Ink ink = request.Inks.Deep(OwnDeep);
        Ink paper = request.Inks.Paper;
        for (int depth = Depths - 1; depth >= 1; depth--)
        {
            yield return Shading.Stroke(new Pen().Through(Contour(request, islands, shore, Level(room, depth))), ink, 0.15);
        }

        foreach (Island island in islands)
        {
            int rings = Rings(island, islands.Count);
            for (int i = 0; i < rings; i++)
            {
                Pen ring = island.Ring(1 - ((double)i / rings));
                double width = i % 5 == 0 ? 0.35 : 0.15;
                yield return i == 0 ? Shading.Both(ring, paper, ink, width) : Shading.Stroke(ring, ink, width);
            }
        }

        yield return Shading.Both(Below(room, Contour(request, [], shore, 0)), paper, paper, 0.1);
        yield return Shading.Stroke(new Pen().Through(Contour(request, [], shore, 0)), ink, 0.6);
    }

    private static int Rings(Island island, int oils) => Math.Max(2, (int)Math.Round(island.Part.Share * 100 / RingPercent(oils)));

    private static double Level(Box room, int depth) => room.Height * 0.6 * Math.Pow((double)depth / Depths, 1.1);

    // Where the water is as deep as asked, from left to right: the first such place above the shore.
    private static List<(double X, double Y)> Contour(
        OrnamentRequest request,
        List<Island> islands,
        Func<double, double> shore,
        double level
    )
    {
        const double stepMm = 0.25;
        Box room = request.Room;
        int past = (int)Math.Ceiling(request.BeyondMm * Across / room.Width);
        var line = new List<(double, double)>();
        for (int i = -past; i <= Across + past; i++)
        {
            double x = room.X + (room.Width * i / Across);
            double y = shore(x);
            while (y > room.Y - 20 && shore(x) - y + islands.Sum(k => k.Pushes(x, y)) < level)
            {
                y -= stepMm;
            }

            line.Add((x, y));
        }

        return line;
    }

    private static Pen Below(Box room, List<(double X, double Y)> line)
    {
        double bottom = room.Bottom + BelowMm;
        Pen pen = new Pen().Through(line);
        return pen.Line(line[^1].X, bottom).Line(line[0].X, bottom).Close();
    }

    // Islands are thrown by their names and pushed apart until none touch; edges may cut them, the shore keeps clear.
    private static List<Island> Settle(IReadOnlyList<BlendPart> parts, Box room)
    {
        double area = room.Width * room.Height * LandShare;
        var islands = new List<Island>();
        for (int i = 0; i < parts.Count; i++)
        {
            var seed = new Seed(parts[i].Name + "/place");
            double radius = Math.Sqrt(parts[i].Share * area / Math.PI);
            double slot = (i + 0.5 + seed.Between(-0.3, 0.3)) / parts.Count;
            islands.Add(
                new Island(
                    parts[i],
                    parts.Count == 1 ? room.X + (room.Width * seed.Between(0.42, 0.6)) : room.X + (room.Width * slot),
                    room.Y
                        + (
                            room.Height
                            * (
                                parts.Count == 1 ? 0.38
                                : i % 2 == 0 ? seed.Between(0.45, 0.6)
                                : seed.Between(0.1, 0.25)
                            )
                        ),
                    radius
                )
            );
        }

        for (int round = 0; round < 400; round++)
        {
            for (int i = 0; i < islands.Count; i++)
            {
                for (int j = i + 1; j < islands.Count; j++)
                {
                    (islands[i], islands[j]) = PushApart(islands[i], islands[j]);
                }

                islands[i] = KeepIn(islands[i], room);
            }
        }

        return islands;
    }

    private static (Island, Island) PushApart(Island one, Island other)
    {
        double dx = other.X - one.X;
        double dy = other.Y - one.Y;
        double distance = Math.Max(0.01, Math.Sqrt((dx * dx) + (dy * dy)));
        double lacking = ((one.Radius + other.Radius) * 1.16) - distance;
        if (lacking <= 0)
        {
            return (one, other);
        }

        double x = dx / distance * lacking * 0.25;
        double y = dy / distance * lacking * 0.25;
        return (one with { X = one.X - x, Y = one.Y - y }, other with { X = other.X + x, Y = other.Y + y });
    }

    private static Island KeepIn(Island island, Box room)
    {
        double r = island.Radius;
        return island with
        {
            X = Clamp(island.X, room.X + (r * 0.55), room.Right - (r * 0.55)),
            Y = Clamp(island.Y, room.Y + (r * 0.35), room.Y + (room.Height * 0.84) - (r * 0.95)),
        };
    }

    private static double Clamp(double value, double low, double high) => Math.Max(low, Math.Min(value, Math.Max(low, high)));
}

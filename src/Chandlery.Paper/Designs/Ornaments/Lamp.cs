using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Designs.Ornaments;

/// <summary>
/// A lamp over a dark horizon: one soft disc of light for each oil, as large as its share, added up as light adds up; below the
/// horizon a column of dashes for each wick, as light on water. In one ink, dots on the golden spiral that shrink outwards.
/// </summary>
internal sealed class Lamp : IOrnament
{
    private const double DotsPerMm = 6;
    private const double HorizonShare = 0.62;
    private const double GoldenAngle = 2.399963229728653;

    private static readonly Ink OwnNight = Ink.Of("#11141B") with { Process = new Cmyk(60, 45, 30, 85) };
    private static readonly Ink OwnCream = Ink.Of("#FFF3D8");

    /// <inheritdoc/>
    public string Kind => "lamp";

    /// <inheritdoc/>
    public IEnumerable<SceneItem> Draw(OrnamentRequest request)
    {
        Box room = request.Room;
        double horizon = room.Y + (room.Height * HorizonShare);
        Ink cream = request.Inks.Light(OwnCream);
        IEnumerable<SceneItem> light = request.Inks.IsOneInk ? Dots(request, room, horizon) : Glow(request, room, horizon);
        foreach (SceneItem item in light)
        {
            yield return item;
        }

        double margin = room.Width * 0.115;
        yield return Strokes.Line(room.X + margin, horizon, room.Right - margin, horizon, cream, 0.3);
        foreach (SceneItem item in Water(request, room, horizon, margin, cream))
        {
            yield return item;
        }
    }

    private static IEnumerable<SceneItem> Glow(OrnamentRequest request, Box room, double horizon)
    {
        Ink night = request.Inks.Deep(OwnNight);
        double middleX = room.CentreX;
        double middleY = room.Y + ((horizon - room.Y) * 0.66);
        double reach = Math.Min(room.Width * 0.62, (horizon - room.Y) * 0.95);
        List<(double X, double Y, double Radius, Ink Ink)> discs = [(middleX, middleY, reach * 0.24, OwnCream)];
        for (int i = 0; i < request.Facts.Parts.Count; i++)
        {
            BlendPart part = request.Facts.Parts[i];
            double angle = (i * GoldenAngle) - 2.2;
            double away = request.Facts.Parts.Count == 1 ? 0 : reach * 0.34;
            discs.Add(
                (
                    middleX + (away * Math.Cos(angle)),
                    middleY + (away * 0.8 * Math.Sin(angle)),
                    reach * (0.55 + (0.75 * Math.Sqrt(part.Share))),
                    part.Ink
                )
            );
        }

        Box sky = Sky(request, discs, horizon);
        int width = (int)(sky.Width * DotsPerMm);
        int height = (int)(sky.Height * DotsPerMm);
        var pixels = new byte[width * height * 3];
        for (int row = 0; row < height; row++)
        {
            for (int column = 0; column < width; column++)
            {
                double x = sky.X + ((column + 0.5) / DotsPerMm);
                double y = sky.Y + ((row + 0.5) / DotsPerMm);
                double red = 0;
                double green = 0;
                double blue = 0;
                for (int d = 0; d < discs.Count; d++)
                {
                    (double dx, double dy, double radius, Ink ink) = discs[d];
                    double far = (((x - dx) * (x - dx)) + ((y - dy) * (y - dy))) / (radius * radius);
                    if (far >= 1)
                    {
                        continue;
                    }

                    double strength = (1 - far) * (1 - far) * (d == 0 ? 1.6 : 0.85);
                    red += strength * ink.Red / 255;
                    green += strength * ink.Green / 255;
                    blue += strength * ink.Blue / 255;
                }

                int at = ((row * width) + column) * 3;
                pixels[at] = Lit(night.Red, red);
                pixels[at + 1] = Lit(night.Green, green);
                pixels[at + 2] = Lit(night.Blue, blue);
            }
        }

        yield return new PictureItem(new PixelGrid(width, height, pixels), sky.X, sky.Y, sky.Width, sky.Height);
    }

    // Above the horizon as far as there is light, and no further than the art goes.
    private static Box Sky(OrnamentRequest request, List<(double X, double Y, double Radius, Ink Ink)> discs, double horizon)
    {
        double left = Math.Max(request.Room.X - request.BeyondMm, discs.Min(d => d.X - d.Radius));
        double right = Math.Min(request.Room.Right + request.BeyondMm, discs.Max(d => d.X + d.Radius));
        double top = Math.Max(request.Room.Y - request.BeyondMm, discs.Min(d => d.Y - d.Radius));
        return new Box(left, top, right - left, horizon - top);
    }

    // Light fills what is dark and never passes white.
    private static byte Lit(byte ground, double light) => (byte)Math.Round(255 - ((255 - ground) * Math.Exp(-1.15 * light)));

    private static IEnumerable<SceneItem> Dots(OrnamentRequest request, Box room, double horizon)
    {
        const int dots = 900;
        double middleX = room.CentreX;
        double middleY = room.Y + ((horizon - room.Y) * 0.66);
        double reach = Math.Max(room.Width, horizon - room.Y) * 0.72;
        double turn = new Seed(request.Facts.Name).Between(0, 2 * Math.PI);
        Ink ink = request.Inks.Light(OwnCream);
        var pen = new Pen();
        for (int i = 1; i < dots; i++)
        {
            double way = Math.Sqrt((double)i / dots);
            double x = middleX + (reach * way * Math.Cos((i * GoldenAngle) + turn));
            double y = middleY + (reach * way * Math.Sin((i * GoldenAngle) + turn));
            double radius = (reach / 27 * Math.Pow(1 - way, 0.85)) + 0.1;
            if (y < horizon - radius - 0.4 && x > room.X - request.BeyondMm && x < room.Right + request.BeyondMm)
            {
                pen.Circle(x, y, radius * 0.62);
            }
        }

        yield return Shading.Fill(pen, ink);
    }

    private static IEnumerable<SceneItem> Water(OrnamentRequest request, Box room, double horizon, double margin, Ink cream)
    {
        int wicks = Math.Clamp(request.Facts.Wicks, 1, 14);
        double width = room.Width - (2 * margin);
        double column = Math.Min(width / wicks, width * 0.16);
        double start = room.CentreX - (column * wicks / 2);
        double deep = (room.Bottom - horizon) * 0.86;
        IReadOnlyList<BlendPart> parts = request.Facts.Parts;
        for (int w = 0; w < wicks; w++)
        {
            Ink ink = request.Inks.IsOneInk || parts.Count == 0 ? cream : DealtOut(parts, (w + 0.5) / wicks);
            double middle = 1 - (Math.Abs(w - ((wicks - 1) / 2.0)) / Math.Max(1, wicks));
            int dashes = (int)Math.Max(3, Math.Round(11 * middle));
            for (int i = 0; i < dashes; i++)
            {
                double way = (double)i / dashes;
                double half = column * 0.42 * (1 - way) * (1 - (0.2 * way));
                double x = start + (column * (w + 0.5)) + (request.Facts.Wicks > 1 ? column * 0.1 * Math.Sin((i * 2.4) + w) : 0);
                double y = horizon + 1.9 + (deep * i / 11);
                Ink lit = request.Inks.IsOneInk ? ink : ink.Towards(request.Inks.Deep(OwnNight), 0.7 * way);
                yield return Strokes.Line(x - half, y, x + half, y, lit, 0.5);
            }
        }
    }

    private static Ink DealtOut(IReadOnlyList<BlendPart> parts, double way)
    {
        // Neighbours differ: the golden ratio deals the shares out over the columns.
        double place = way * parts.Count * 0.618033988749895 * 7 % 1;
        double sum = 0;
        foreach (BlendPart part in parts)
        {
            sum += part.Share;
            if (place <= sum)
            {
                return part.Ink;
            }
        }

        return parts[^1].Ink;
    }
}

using System.Globalization;
using Chandlery.Core.Declared;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Designs.Ornaments;

/// <summary>
/// A bed of plants: a line cut by the shares, and from the middle of each piece the plant of that oil, its leaf by the note, its
/// height and number of leaves by the share. Colour lies a little off the line, as from a worn block.
/// </summary>
internal sealed class Leafwork : IOrnament
{
    private const double OutlineMm = 0.3;
    private const double VeinMm = 0.15;
    private const double OffMm = 0.7;
    private const int MostLeaves = 7;
    private const int FewestLeaves = 3;

    private static readonly Ink OwnInk = Ink.Of("#23302B");

    /// <inheritdoc/>
    public string Kind => "leafwork";

    /// <inheritdoc/>
    public IEnumerable<SceneItem> Draw(OrnamentRequest request)
    {
        Box room = request.Room;
        Ink ink = request.Inks.Deep(OwnInk);
        double ground = room.Bottom - 4.5;
        IReadOnlyList<BlendPart> parts = request.Facts.Parts;
        double x = room.X;
        double greatest = parts.Count == 0 ? 1 : parts.Max(p => p.Share);
        foreach (BlendPart part in parts)
        {
            double width = room.Width * part.Share;
            foreach (SceneItem item in Plant(request, part, x + (width / 2), ground, greatest, ink))
            {
                yield return item;
            }

            x += width;
        }

        yield return Strokes.Line(room.X, ground, room.Right, ground, ink, OutlineMm);
        x = room.X;
        foreach (BlendPart part in parts)
        {
            if (x > room.X)
            {
                yield return Strokes.Line(x, ground, x, ground + 1.8, ink, OutlineMm);
            }

            if (request.Facts.ShowsShares)
            {
                string share = Math.Round(part.Share * 100).ToString(CultureInfo.InvariantCulture);
                yield return Strokes.Text(share, Weight.Regular, x + (x > room.X ? 1 : 0), ground + 3.2, 2.25, ink);
            }

            x += room.Width * part.Share;
        }
    }

    private static IEnumerable<SceneItem> Plant(OrnamentRequest request, BlendPart part, double x, double ground, double greatest, Ink ink)
    {
        var seed = new Seed(part.Name + "/plant");
        double room = ground - request.Room.Y;
        bool alone = request.Facts.Parts.Count == 1;
        double height = room * (alone ? 1.02 : 0.52 + (0.44 * part.Share / greatest));
        int leaves = (int)Math.Clamp(Math.Round(FewestLeaves + (part.Share * 14)), FewestLeaves, MostLeaves);
        double lean = seed.Between(-0.1, 0.1);
        double reach = Math.Min(request.Room.Width * (alone ? 0.36 : 0.19 + (0.05 * part.Share)), height * 0.34);

        // Small leaves for long names of many oils, so that neighbours only touch.
        reach = Math.Min(reach, (request.Room.Width * part.Share * 0.5) + (request.Room.Width * 0.06));
        (double X, double Y) Stem(double way) => (x + (height * lean * way) + (height * 0.03 * Math.Sin(way * 3)), ground - (height * way));
        var stem = new List<(double, double)>();
        for (int i = 0; i <= 8; i++)
        {
            stem.Add(Stem(i / 8.0 * 0.95));
        }

        yield return Shading.Stroke(new Pen().Through(stem), ink, OutlineMm);
        int count = part.Note is Scent.Leaf or Scent.Flower or Scent.Spice ? leaves + 2 : leaves * 2;
        for (int i = 0; i < count; i++)
        {
            double way = 0.2 + (0.74 * i / (count - 1));
            int side = i % 2 == 0 ? -1 : 1;
            (double sx, double sy) = Stem(way);
            double size =
                reach
                * (part.Note is Scent.Leaf or Scent.Flower or Scent.Spice ? 1.25 : 1)
                * (1.08 - (0.5 * way))
                * seed.Between(0.92, 1.08);
            double up = part.Note is Scent.Sea or Scent.Smoke or Scent.Wood or Scent.Clean
                ? seed.Between(0.85, 1.1)
                : seed.Between(0.35, 0.7);
            double angle = (-Math.PI / 2) + (side * ((Math.PI / 2) - up));
            foreach (SceneItem item in LeafAt(request, part, new Turtle(sx, sy, angle, size), ink))
            {
                yield return item;
            }
        }

        (double tx, double ty) = Stem(0.94);
        foreach (SceneItem item in LeafAt(request, part, new Turtle(tx, ty, (-Math.PI / 2) + lean, reach * 0.62), ink))
        {
            yield return item;
        }

        if (part.Note == Scent.Citrus)
        {
            (double fx, double fy) = Stem(0.52);
            foreach (SceneItem item in Slice(request, part, fx + (reach * 0.42), fy, reach * 0.42, ink))
            {
                yield return item;
            }
        }
    }

    private static IEnumerable<SceneItem> LeafAt(OrnamentRequest request, BlendPart part, Turtle t, Ink ink)
    {
        Ink paper = request.Inks.IsOneInk ? request.Inks.Paper : request.Inks.Light(Ink.Of("#F5EFE2"));
        yield return Shading.Fill(Leaf.Outline(part.Note, t), paper);
        if (!request.Inks.IsOneInk)
        {
            yield return Shading.Fill(Leaf.Outline(part.Note, t.Shifted(OffMm, OffMm * 0.6)), part.Ink);
        }

        yield return Shading.Stroke(Leaf.Outline(part.Note, t), ink, OutlineMm);
        yield return Shading.Stroke(Leaf.Veins(part.Note, t), ink, VeinMm);
    }

    private static IEnumerable<SceneItem> Slice(OrnamentRequest request, BlendPart part, double x, double y, double radius, Ink ink)
    {
        const int segments = 9;
        Ink paper = request.Inks.IsOneInk ? request.Inks.Paper : request.Inks.Light(Ink.Of("#F5EFE2"));
        yield return Shading.Fill(new Pen().Circle(x, y, radius), paper);
        if (!request.Inks.IsOneInk)
        {
            yield return Shading.Fill(new Pen().Circle(x + OffMm, y + (OffMm * 0.6), radius), part.Ink);
        }

        yield return Shading.Stroke(new Pen().Circle(x, y, radius), ink, OutlineMm);
        yield return Shading.Stroke(new Pen().Circle(x, y, radius * 0.84), ink, VeinMm);
        for (int i = 0; i < segments; i++)
        {
            double from = 2 * Math.PI * (i + 0.08) / segments;
            double to = 2 * Math.PI * (i + 0.92) / segments;
            double middle = (from + to) / 2;
            double r = radius * 0.76;
            Pen piece = new Pen()
                .Move(x + (radius * 0.12 * Math.Cos(middle)), y + (radius * 0.12 * Math.Sin(middle)))
                .Line(x + (r * Math.Cos(from)), y + (r * Math.Sin(from)))
                .Curve(
                    x + (r * 1.1 * Math.Cos(from + 0.18)),
                    y + (r * 1.1 * Math.Sin(from + 0.18)),
                    x + (r * 1.1 * Math.Cos(to - 0.18)),
                    y + (r * 1.1 * Math.Sin(to - 0.18)),
                    x + (r * Math.Cos(to)),
                    y + (r * Math.Sin(to))
                )
                .Close();
            yield return Shading.Stroke(piece, ink, VeinMm);
        }
    }
}

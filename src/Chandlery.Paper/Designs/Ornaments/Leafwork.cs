using System.Globalization;
using Chandlery.Core.Declared;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Pdf;
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
    private const double NeedleMm = 0.2;
    private const double LeastFruitMm = 0.7;
    private const int MostLeaves = 12;
    private const int FewestLeaves = 4;

    // Where leaves begin and end on a stem, and how long the last are; all of the first.
    private const double FirstLeaf = 0.14;
    private const double LastLeaf = 0.86;
    private const double TopOfFirst = 0.66;
    private const double MeanOfFirst = 0.83;

    // How far the lowest leaf may hang below where it begins, so that it stays above the ground.
    private const double HangsOfLeaf = 0.4;

    // A plant is made smaller in such steps until it keeps this part of the margin free on every side.
    private const double ScaleStep = 0.05;
    private const double LeastScale = 0.5;
    private const double LeastOfMargin = 0.4;

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
            foreach (SceneItem item in WithinTheEdges(request, (part, greatest), (x + (width / 2), ground), ink))
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

    // The plant as large as it stays clear of the front's edges: a leaf that only touches one looks like a slip of the knife.
    private static List<SceneItem> WithinTheEdges(
        OrnamentRequest request,
        (BlendPart Part, double Greatest) of,
        (double X, double Ground) at,
        Ink ink
    )
    {
        Box room = request.Room;
        for (double scale = 1; ; scale -= ScaleStep)
        {
            List<SceneItem> plant = [.. Plant(request, of.Part, at.X, at.Ground, of.Greatest, scale, ink)];
            if (
                scale < LeastScale
                || (
                    ItemBounds.Of(plant) is { } bounds
                    && bounds.LeftMm >= room.X * LeastOfMargin
                    && bounds.RightMm <= room.Right + (room.X * (1 - LeastOfMargin))
                    && bounds.TopMm >= room.Y * LeastOfMargin
                )
            )
            {
                return plant;
            }
        }
    }

    private static IEnumerable<SceneItem> Plant(
        OrnamentRequest request,
        BlendPart part,
        double x,
        double ground,
        double greatest,
        double scale,
        Ink ink
    )
    {
        var seed = new Seed(part.Name + "/plant");
        double room = ground - request.Room.Y;
        bool alone = request.Facts.Parts.Count == 1;
        double height = scale * room * (alone ? 1.06 : 0.6 + (0.36 * part.Share / greatest));
        double lean = seed.Between(-0.1, 0.1);
        Habit habit = Habit.Of(part.Note);
        double reach = LeafLength(request, part, height) * scale * habit.Length;
        height = alone ? height : Math.Min(height, (room - (reach * TopOfFirst)) / LastLeaf);
        double first = Math.Max(FirstLeaf, reach * HangsOfLeaf / height);
        int count = (int)Math.Clamp(Math.Round(height * (1 - FirstLeaf) / (reach * habit.Apart * MeanOfFirst)), FewestLeaves, MostLeaves);
        (double X, double Y) Stem(double way) => (x + (height * lean * way) + (height * 0.03 * Math.Sin(way * 3)), ground - (height * way));
        List<(double, double)> stem = [.. Enumerable.Range(0, 9).Select(i => Stem(i / 8.0 * LastLeaf))];
        yield return Shading.Stroke(new Pen().Through(stem), ink, OutlineMm);

        var fruits = new List<SceneItem>();

        // From the top down, so that what grows lower stands in front.
        (double tx, double ty) = Stem(LastLeaf);
        foreach (int side in new[] { -1, 1 })
        {
            double angle = (-Math.PI / 2) + lean + (side * habit.TopSpread);
            foreach (SceneItem item in LeafAt(request, part, new Turtle(tx, ty, angle, reach * TopOfFirst), ink))
            {
                yield return item;
            }
        }

        for (int i = count - 1; i >= 0; i--)
        {
            double way = first + ((LastLeaf - first) * i / count);
            int side = i % 2 == 0 ? -1 : 1;
            (double sx, double sy) = Stem(way);
            double size = reach * (1 - ((1 - TopOfFirst) * way)) * seed.Between(0.94, 1.06);
            double angle = (-Math.PI / 2) + (side * seed.Between(habit.Spread - 0.12, habit.Spread + 0.12));
            foreach (SceneItem item in LeafAt(request, part, new Turtle(sx, sy, angle, size), ink))
            {
                yield return item;
            }

            if (habit.Fruit is { } fruit && i % fruit.Every == fruit.Every / 2)
            {
                double radius = Math.Max(LeastFruitMm, reach * fruit.OfLeaf);
                fruits.AddRange(FruitAt(request, part, (sx - (side * radius * 0.9), sy), radius, ink));
            }
        }

        foreach (SceneItem item in fruits)
        {
            yield return item;
        }
    }

    // A lonely plant fills the page with larger leaves, not with more; neighbours may touch and just cover each other.
    private static double LeafLength(OrnamentRequest request, BlendPart part, double height)
    {
        double width = request.Room.Width;
        return request.Facts.Parts.Count == 1
            ? Math.Min(width * 0.42, height * 0.4)
            : Math.Min(width * ((part.Share * 0.42) + 0.1), Math.Min(width * 0.24, height * 0.34));
    }

    private static IEnumerable<SceneItem> FruitAt(
        OrnamentRequest request,
        BlendPart part,
        (double X, double Y) at,
        double radius,
        Ink ink
    ) => part.Note == Scent.Citrus ? Slice(request, part, at.X, at.Y, radius, ink) : Berry(request, part, at.X, at.Y, radius, ink);

    // A small round thing with ribs, as figs and the bladders of weed.
    private static IEnumerable<SceneItem> Berry(OrnamentRequest request, BlendPart part, double x, double y, double radius, Ink ink)
    {
        yield return Shading.Fill(new Pen().Circle(x, y, radius), PaperOf(request));
        if (!request.Inks.IsOneInk)
        {
            double off = Math.Min(OffMm, radius * 0.5);
            yield return Shading.Fill(new Pen().Circle(x + off, y + (off * 0.6), radius), part.Ink);
        }

        yield return Shading.Stroke(new Pen().Circle(x, y, radius), ink, OutlineMm);
        if (part.Note == Scent.Leaf)
        {
            Pen ribs = new();
            foreach (double aside in new[] { -0.75, 0, 0.75 })
            {
                ribs.Move(x, y - radius)
                    .Curve(x + (aside * radius), y - (radius * 0.5), x + (aside * radius), y + (radius * 0.5), x, y + radius);
            }

            yield return Shading.Stroke(ribs, ink, VeinMm);
        }
    }

    private static Ink PaperOf(OrnamentRequest request) =>
        request.Inks.IsOneInk ? request.Inks.Paper : request.Inks.Light(Ink.Of("#F5EFE2"));

    private static IEnumerable<SceneItem> LeafAt(OrnamentRequest request, BlendPart part, Turtle t, Ink ink)
    {
        yield return Shading.Fill(Leaf.Outline(part.Note, t), PaperOf(request));
        if (!request.Inks.IsOneInk)
        {
            yield return Shading.Fill(Leaf.Outline(part.Note, t.Shifted(OffMm, OffMm * 0.6)), part.Ink);
        }

        // Needles are their own outline.
        bool isNeedles = part.Note is Scent.Smoke or Scent.Wood;
        if (!isNeedles)
        {
            yield return Shading.Stroke(Leaf.Outline(part.Note, t), ink, OutlineMm);
        }

        yield return Shading.Stroke(Leaf.Veins(part.Note, t), ink, isNeedles ? NeedleMm : VeinMm);
    }

    private static IEnumerable<SceneItem> Slice(OrnamentRequest request, BlendPart part, double x, double y, double radius, Ink ink)
    {
        const int segments = 9;
        yield return Shading.Fill(new Pen().Circle(x, y, radius), PaperOf(request));
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

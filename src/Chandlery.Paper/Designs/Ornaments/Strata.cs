using System.Globalization;
using Chandlery.Core.Declared;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Designs.Ornaments;

/// <summary>
/// Layers as high as the shares of the oils, the lightest note on top, with edges whose waves end where they began: around a vessel
/// both ends meet. In one ink, a hundred lines of which the oils' are solid.
/// </summary>
internal sealed class Strata : IOrnament
{
    private const int Across = 28;
    private const int WholeWaves = 4;
    private const double SwellOfHeight = 0.022;
    private const double LineStepMm = 2.1;

    // From the note that goes first to the one that stays longest (common practice, no source).
    private static readonly Scent[] FromLightToHeavy =
    [
        Scent.Citrus,
        Scent.Clean,
        Scent.Sea,
        Scent.Leaf,
        Scent.Flower,
        Scent.Spice,
        Scent.Sweet,
        Scent.Resin,
        Scent.Wood,
        Scent.Smoke,
    ];

    private static readonly Ink OwnInk = Ink.Of("#222F3A");

    /// <inheritdoc/>
    public string Kind => "strata";

    /// <inheritdoc/>
    public IEnumerable<SceneItem> Draw(OrnamentRequest request) => request.Inks.IsOneInk ? Lines(request) : Layers(request);

    private static IEnumerable<SceneItem> Layers(OrnamentRequest request)
    {
        Box room = request.Room;
        List<BlendPart> parts = Ordered(request.Facts);
        if (parts.Count == 0)
        {
            yield return Shading.Fill(new Pen().Box(room.X, room.Y, room.Width, room.Height), request.Inks.Deep(OwnInk));
            yield break;
        }

        double top = room.Y;
        var written = new List<SceneItem>();
        for (int i = 0; i < parts.Count; i++)
        {
            BlendPart part = parts[i];
            double height = room.Height * part.Share;
            double upper = top;
            double lower = top + height;
            string above = i == 0 ? "" : parts[i - 1].Name;
            Ink ink = part.Ink.Towards(request.Inks.Deep(OwnInk), i == parts.Count - 1 && parts.Count > 2 ? 0.55 : 0);
            List<(double, double)> edge = Edge(request, i == 0 ? room.Y - request.BeyondMm : upper, above);
            Pen area = new Pen().Through(edge);
            yield return Shading.Fill(
                area.Line(edge[^1].Item1, room.Bottom + request.BeyondMm).Line(edge[0].Item1, room.Bottom + request.BeyondMm).Close(),
                ink
            );
            int lines = Math.Max(1, (int)(height / LineStepMm));
            for (int k = 1; k < lines; k++)
            {
                double way = (double)k / lines;
                List<(double, double)> line = Between(Edge(request, upper, above), Edge(request, lower, part.Name), way);
                yield return Shading.Stroke(new Pen().Through(line), ink.Towards(Ink.Black, 0.24), 0.15 + (0.25 * way));
            }

            written.AddRange(Words(request, part, ink, upper, lower));
            top = lower;
        }

        foreach (SceneItem item in written)
        {
            yield return item;
        }
    }

    // The oil's name at one edge and its share at the other, on a patch that keeps the lines out of them.
    private static IEnumerable<SceneItem> Words(OrnamentRequest request, BlendPart part, Ink ground, double upper, double lower)
    {
        const double size = 2.25;
        const double marginMm = 4;
        double baseline = Math.Max(upper + 5.5, request.Room.Y + 7);
        bool covered = request.Name is { } name && baseline > name.Box.Y - 3 && baseline - size < name.Box.Bottom + 1;
        if (request.IsPlain || baseline > lower - 1 || covered)
        {
            yield break;
        }

        Ink ink = ground.Luminance > 0.25 ? request.Inks.Deep(OwnInk) : request.Inks.Light(Ink.Of("#F5EFE2"));
        TextItem words = Strokes.Text(part.Name, Weight.SemiBold, request.Room.X + marginMm, baseline, size, ink);
        yield return Patch(words, ground);
        yield return words;
        if (request.Facts.ShowsShares)
        {
            TextItem share = Strokes.Text(
                Math.Round(part.Share * 100).ToString(CultureInfo.InvariantCulture),
                Weight.SemiBold,
                0,
                baseline,
                size,
                ink
            );
            share = share with { XMm = request.Room.Right - marginMm - share.WidthMm };
            yield return Patch(share, ground);
            yield return share;
        }
    }

    private static PathItem Patch(TextItem text, Ink ground) =>
        Shading.Fill(new Pen().Box(text.XMm - 1, text.BaselineMm - text.SizeMm, text.WidthMm + 2, text.SizeMm * 1.45), ground);

    private static IEnumerable<SceneItem> Lines(OrnamentRequest request)
    {
        Box room = request.Room;
        Ink ink = request.Inks.Deep(OwnInk);
        const int hundred = 100;
        int solid = (int)Math.Clamp(Math.Round(request.Facts.LoadPercent), 1, 30);
        int from = (int)(hundred * 0.3);
        double step = room.Height / hundred;
        string name = request.Facts.Parts.Count > 0 ? request.Facts.Parts[0].Name : request.Facts.Name;
        double Bulge(double way) => Math.Exp(-Math.Pow((way - ((from + (solid / 2.0)) / hundred)) / 0.22, 2));
        for (int i = 0; i < hundred; i++)
        {
            if (i >= from && i < from + solid)
            {
                continue;
            }

            double way = (double)i / hundred;
            List<(double X, double Y)> line = Edge(request, room.Y + (i * step), name);
            List<(double, double)> bent = [.. line.Select(p => (p.X, room.Y + (i * step) + ((p.Y - room.Y - (i * step)) * Bulge(way))))];
            yield return Shading.Stroke(new Pen().Through(bent), ink, 0.15);
        }

        List<(double X, double Y)> top = Edge(request, room.Y + (from * step), name);
        List<(double X, double Y)> bottom = Edge(request, room.Y + ((from + solid) * step), name + "/below");
        Pen band = new Pen().Through(top);
        band.Line(bottom[^1].X, bottom[^1].Y);
        for (int i = bottom.Count - 1; i >= 0; i--)
        {
            band.Line(bottom[i].X, bottom[i].Y);
        }

        yield return Shading.Fill(band.Close(), ink);
    }

    private static List<BlendPart> Ordered(DesignFacts facts) => [.. facts.Parts.OrderBy(p => Array.IndexOf(FromLightToHeavy, p.Note))];

    private static List<(double X, double Y)> Edge(OrnamentRequest request, double y, string name)
    {
        Box room = request.Room;
        int past = (int)Math.Ceiling(request.BeyondMm * Across / room.Width);
        var seed = new Seed(name + "/edge");
        double[] phases = [.. Enumerable.Range(0, WholeWaves).Select(_ => seed.Between(0, 2 * Math.PI))];
        double swell = name.Length == 0 ? 0 : Math.Min(room.Height * SwellOfHeight, 2.2);
        var line = new List<(double, double)>();
        for (int i = -past; i <= Across + past; i++)
        {
            double way = 2 * Math.PI * i / Across;
            double wave = phases.Select((phase, k) => Math.Sin(((k + 1) * way) + phase) / (k + 1)).Sum();
            line.Add((room.X + (room.Width * i / Across), y + (swell * wave)));
        }

        return line;
    }

    private static List<(double, double)> Between(List<(double X, double Y)> upper, List<(double X, double Y)> lower, double way) =>
        [.. upper.Zip(lower, (u, l) => (u.X, u.Y + ((l.Y - u.Y) * way)))];
}

using Chandlery.Core.Declared;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Designs.Ornaments;

/// <summary>A seal of woven lines: a ring for each oil, as wide as its share, with as many waves a turn as its note has; room for letters in the middle.</summary>
internal sealed class GuillocheSeal : IOrnament
{
    private const double LineMm = 0.2;
    private const double OneInkLineMm = 0.25;
    private const double HoleShare = 0.4;
    private const double GapMm = 0.7;
    private const int PointsOfWave = 6;

    private static readonly Ink OwnCream = Ink.Of("#F5EFE2");

    /// <inheritdoc/>
    public string Kind => "seal";

    /// <inheritdoc/>
    public IEnumerable<SceneItem> Draw(OrnamentRequest request)
    {
        Box room = request.Room;
        double outer = Math.Min(room.Width, room.Height) / 2;
        IReadOnlyList<BlendPart> parts = request.Facts.Parts;
        double gaps = GapMm * Math.Max(0, parts.Count - 1);
        double band = (outer * (1 - HoleShare)) - gaps;
        double radius = outer;
        foreach (BlendPart part in parts)
        {
            double width = band * part.Share;
            Ink ink = request.Inks.IsOneInk ? request.Inks.Light(OwnCream) : part.Ink.Towards(OwnCream, 0.18);
            int waves = WavesOf(part.Note, parts.Count);
            int copies = Math.Clamp((int)Math.Round(width * 1.6), 4, 8);
            for (int i = 0; i < copies; i++)
            {
                yield return Shading.Stroke(
                    Wave(room.CentreX, room.CentreY, radius - (width / 2), width / 2, waves, 2 * Math.PI * i / copies),
                    ink,
                    request.Inks.IsOneInk ? OneInkLineMm : LineMm
                );
            }

            radius -= width + GapMm;
        }
    }

    // As many as let a printed ring of that note be told from its neighbour's.
    private static int WavesOf(Scent note, int rings)
    {
        int waves = note switch
        {
            Scent.Citrus => 20,
            Scent.Flower => 16,
            Scent.Spice => 18,
            Scent.Smoke => 13,
            Scent.Wood => 11,
            Scent.Resin => 10,
            Scent.Sea => 9,
            Scent.Clean => 8,
            Scent.Sweet => 7,
            _ => 5,
        };
        return rings == 1 ? waves : waves * 2;
    }

    private static Pen Wave(double x, double y, double middle, double swing, int waves, double phase)
    {
        int count = waves * PointsOfWave;
        var points = new (double, double)[count];
        for (int i = 0; i < count; i++)
        {
            double angle = 2 * Math.PI * i / count;
            double radius = middle + (swing * Math.Sin((waves * angle) + phase));
            points[i] = (x + (radius * Math.Cos(angle)), y + (radius * Math.Sin(angle)));
        }

        return new Pen().Through(points, closed: true);
    }
}

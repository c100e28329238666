using Chandlery.Paper.Fonts;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Designs;

/// <summary>Sets letters one by one along a circle.</summary>
internal static class ArcText
{
    private const double TrackingEm = 0.04;

    /// <summary>The letters; smaller where the text is longer than the arc.</summary>
    /// <param name="text">The text.</param>
    /// <param name="face">The face.</param>
    /// <param name="arc">Where they stand.</param>
    /// <param name="sizeMm">Type size.</param>
    /// <param name="ink">The ink.</param>
    public static IEnumerable<SceneItem> Set(string text, Face face, TextArc arc, double sizeMm, Ink ink)
    {
        ShapedText whole = face.Shape(text);
        double em = ((double)whole.Advance / face.UnitsPerEm) + (TrackingEm * Math.Max(0, text.Length - 1));
        if (em <= 0)
        {
            yield break;
        }

        double size = Math.Min(sizeMm, arc.Radius * arc.SpanDegrees * Math.PI / 180 / em);

        // Below, letters stand on the outside of their circle, so that they read upright.
        double baseline = arc.AtBottom ? arc.Radius + (size * 0.7) : arc.Radius;
        double scale = size / face.UnitsPerEm;
        double half = em * size / 2;
        for (int i = 0; i < whole.Glyphs.Length; i++)
        {
            int end = i + 1 < whole.Clusters.Length ? whole.Clusters[i + 1] : text.Length;
            string letter = text[whole.Clusters[i]..end];
            if (string.IsNullOrWhiteSpace(letter))
            {
                continue;
            }

            double advance = face.Shape(letter).Advance * scale;
            double along = (whole.Positions[i] * scale) + (TrackingEm * size * i) + (advance / 2) - half;
            double angle = along / baseline;
            double turn = arc.AtBottom ? -angle : angle;
            double direction = arc.AtBottom ? (Math.PI / 2) - angle : (-Math.PI / 2) + angle;
            double x = arc.Centre.X + (baseline * Math.Cos(direction));
            double y = arc.Centre.Y + (baseline * Math.Sin(direction));
            yield return new TextItem(
                face.Shape(letter),
                face,
                x - (advance / 2 * Math.Cos(turn)),
                y - (advance / 2 * Math.Sin(turn)),
                size,
                ink
            )
            {
                AngleDegrees = turn * 180 / Math.PI,
            };
        }
    }
}

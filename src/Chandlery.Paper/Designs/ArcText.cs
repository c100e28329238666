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
    /// <param name="centre">The circle's middle, millimetres.</param>
    /// <param name="radius">Radius of the baseline.</param>
    /// <param name="sizeMm">Type size.</param>
    /// <param name="spanDegrees">Longest arc.</param>
    /// <param name="atBottom">True to read along the lower half.</param>
    /// <param name="ink">The ink.</param>
    public static IEnumerable<SceneItem> Set(
        string text,
        Face face,
        (double X, double Y) centre,
        double radius,
        double sizeMm,
        double spanDegrees,
        bool atBottom,
        Ink ink
    )
    {
        ShapedText whole = face.Shape(text);
        double em = ((double)whole.Advance / face.UnitsPerEm) + (TrackingEm * Math.Max(0, text.Length - 1));
        if (em <= 0)
        {
            yield break;
        }

        double size = Math.Min(sizeMm, radius * spanDegrees * Math.PI / 180 / em);

        // Below, letters stand on the outside of their circle, so that they read upright.
        double baseline = atBottom ? radius + (size * 0.7) : radius;
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
            double turn = atBottom ? -angle : angle;
            double direction = atBottom ? (Math.PI / 2) - angle : (-Math.PI / 2) + angle;
            double x = centre.X + (baseline * Math.Cos(direction));
            double y = centre.Y + (baseline * Math.Sin(direction));
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

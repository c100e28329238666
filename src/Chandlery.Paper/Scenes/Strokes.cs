using Chandlery.Core.Law;
using Chandlery.Paper.Fonts;

namespace Chandlery.Paper.Scenes;

/// <summary>Texts, lines and boxes for pages that are drawn by hand rather than from a template. All lengths are millimetres.</summary>
public static class Strokes
{
    /// <summary>A line of text.</summary>
    public static TextItem Text(string text, Weight weight, double x, double baseline, double size, Ink ink) =>
        Text(text, Face.Of(weight), x, baseline, size, ink);

    /// <summary>A line of text in a face.</summary>
    public static TextItem Text(string text, Face face, double x, double baseline, double size, Ink ink) =>
        new(face.Shape(Apostrophes.In(text)), face, x, baseline, size, ink);

    /// <summary>A straight line.</summary>
    public static PathItem Line(double x1, double y1, double x2, double y2, Ink ink, double width) =>
        new(FormattableString.Invariant($"M0 0 L{x2 - x1:0.###} {y2 - y1:0.###}"), x1, y1, 1, null, ink, width);

    /// <summary>The path of a box with its corner at the origin.</summary>
    public static string BoxPath(double width, double height) => FormattableString.Invariant($"M0 0 H{width:0.###} V{height:0.###} H0 Z");
}

using System.Globalization;
using System.Xml.Linq;
using Chandlery.Core.Declared;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Scenes;
using Chandlery.Paper.Shapes;
using SkiaSharp;

namespace Chandlery.Paper.Designs;

/// <summary>Reads a label's cut line from an SVG: one closed line, and holes in it.</summary>
public static class SvgOutline
{
    // Of the box around it: in less nothing can stand.
    private const double ThinnestShare = 0.01;
    private const int MostCorners = 2_000;

    /// <summary>The cut line.</summary>
    /// <param name="svg">The file's text.</param>
    /// <exception cref="FormatException">The file holds no such line; the message says what is in the way and what would help.</exception>
    public static LabelOutline Read(string svg)
    {
        XElement root = SvgLogo.Root(svg);
        LogoArt drawing = SvgLogo.Read(svg);
        double unitMm = UnitMm(root, drawing);
        if (root.Descendants().Any(e => e.Attribute("rx") is not null || e.Attribute("ry") is not null))
        {
            throw new FormatException("it has a rounded rectangle or an ellipse: convert it to a path");
        }

        var rings = new List<IReadOnlyList<(double X, double Y)>>();
        string path = "";
        foreach (PathItem shape in drawing.Paths)
        {
            using var placed = new SKPath(SkiaPaths.Of(shape.Path));
            float scale = (float)(shape.ScaleMm * unitMm);
            placed.Transform(SKMatrix.CreateScaleTranslation(scale, scale, (float)(shape.XMm * unitMm), (float)(shape.YMm * unitMm)));
            rings.AddRange(FlatRings.Of(placed));
            path += $" {placed.ToSvgPathData()}";
        }

        return Checked(rings, path.Trim());
    }

    private static LabelOutline Checked(List<IReadOnlyList<(double X, double Y)>> rings, string path)
    {
        if (rings.Sum(r => r.Count) > MostCorners)
        {
            throw new FormatException($"its line takes more than {MostCorners} points: simplify it");
        }

        if (rings.Count == 0 || rings.Exists(r => r.Count < 3))
        {
            throw new FormatException("its line encloses nothing");
        }

        List<IReadOnlyList<(double X, double Y)>> sorted = [.. rings.OrderByDescending(Rings.Area)];
        IReadOnlyList<(double X, double Y)> outer = sorted[0];
        double left = outer.Min(c => c.X);
        double top = outer.Min(c => c.Y);
        if (Rings.Cross(sorted))
        {
            throw new FormatException("its line crosses itself or another one");
        }

        if (Rings.Area(outer) <= ThinnestShare * (outer.Max(c => c.X) - left) * (outer.Max(c => c.Y) - top))
        {
            throw new FormatException("its line encloses nothing");
        }

        if (sorted.Skip(1).Any(hole => sorted.Count(r => r != hole && Rings.Holds(r, hole[0])) != 1 || !Rings.Holds(outer, hole[0])))
        {
            throw new FormatException("it has several lines: a cut line is one, with nothing in it but holes");
        }

        return new LabelOutline(
            [.. sorted.Select(r => (IReadOnlyList<(double, double)>)[.. r.Select(c => (c.X - left, c.Y - top))])],
            SkiaPaths.Moved(path, -left, -top)
        );
    }

    // A drawing without a size in real units could be any size in print.
    private static double UnitMm(XElement root, LogoArt drawing)
    {
        if (root.Attribute("viewBox") is not null && Millimetres(root, "width") is { } width && Millimetres(root, "height") is { } height)
        {
            double unit = width / drawing.WidthMm;
            return Math.Abs((height / drawing.HeightMm) - unit) < 0.001 * unit
                ? unit
                : throw new FormatException("its width and height are not in the ratio of its viewBox");
        }

        throw new FormatException(
            "it does not give its size in real units: it needs a viewBox, and width and height in mm, such as 'width=\"60mm\" height=\"90mm\" viewBox=\"0 0 60 90\"'"
        );
    }

    private static double? Millimetres(XElement root, string attribute)
    {
        string text = ((string?)root.Attribute(attribute) ?? "").Trim();
        double unit =
            text.Length < 3
                ? 0
                : text[^2..] switch
                {
                    "mm" => 1,
                    "cm" => 10,
                    "in" => 25.4,
                    _ => 0,
                };
        return
            unit > 0
            && double.TryParse(text[..^2], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value)
            && value > 0
            ? value * unit
            : null;
    }
}

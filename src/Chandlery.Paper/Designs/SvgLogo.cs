using System.Globalization;
using System.Xml;
using System.Xml.Linq;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Designs;

/// <summary>
/// Reads a logo from SVG 1.1: filled and stroked shapes in groups. What it cannot draw as a printer must (pictures, text that is no
/// outline, gradients, filters, style sheets) is refused, never left out.
/// </summary>
public static class SvgLogo
{
    private const int MostShapes = 2_000;

    private static readonly string[] Harmless = ["title", "desc", "metadata", "defs", "namedview"];

    /// <summary>The logo.</summary>
    /// <param name="svg">The file's text.</param>
    /// <exception cref="FormatException">The file is no such SVG; the message says what is in the way and what would help.</exception>
    public static LogoArt Read(string svg)
    {
        XElement root = Root(svg);
        (double left, double top, double width, double height) = ViewBox(root);
        var shapes = new List<PathItem>();
        Walk(root, new SvgState(1, -left, -top, Ink.Black, null, 1), shapes);
        return shapes.Count == 0
            ? throw new FormatException("it shows nothing that is drawn as paths: convert text and effects to outlines")
            : new LogoArt(width, height, shapes, null);
    }

    /// <summary>The outermost element of an SVG.</summary>
    /// <exception cref="FormatException">The file is no SVG.</exception>
    internal static XElement Root(string svg)
    {
        XElement root;
        try
        {
            var settings = new XmlReaderSettings { DtdProcessing = DtdProcessing.Ignore, XmlResolver = null };
            using var reader = XmlReader.Create(new StringReader(svg), settings);
            root = XDocument.Load(reader).Root!;
        }
        catch (XmlException error)
        {
            throw new FormatException($"it is no well-formed SVG: {error.Message}", error);
        }

        if (root.Name.LocalName != "svg")
        {
            throw new FormatException($"it is no SVG: its outermost element is '{root.Name.LocalName}'");
        }

        return root;
    }

    private static (double Left, double Top, double Width, double Height) ViewBox(XElement root)
    {
        double[] box = [.. Numbers((string?)root.Attribute("viewBox") ?? "")];
        if (box.Length == 4 && box[2] > 0 && box[3] > 0)
        {
            return (box[0], box[1], box[2], box[3]);
        }

        double width = Length((string?)root.Attribute("width"));
        double height = Length((string?)root.Attribute("height"));
        return width > 0 && height > 0 ? (0, 0, width, height) : throw new FormatException("it has neither a viewBox nor width and height");
    }

    private static void Walk(XElement parent, SvgState state, List<PathItem> shapes)
    {
        foreach (XElement element in parent.Elements())
        {
            string name = element.Name.LocalName;
            if (Harmless.Contains(name))
            {
                continue;
            }

            if (element.Attribute("style") is not null || element.Attribute("class") is not null || element.Attribute("filter") is not null)
            {
                throw new FormatException("it uses styles, classes or filters: save it as plain SVG with fill and stroke attributes");
            }

            SvgState own = state.With(element);
            if (name == "g")
            {
                Walk(element, own, shapes);
                continue;
            }

            string path =
                PathOf(element)
                ?? throw new FormatException($"'{name}' cannot be printed as a path: convert it to outlines and save as plain SVG");
            try
            {
                SkiaPaths.Of(path);
            }
            catch (FormatException error)
            {
                throw new FormatException("one of its paths cannot be read", error);
            }

            if (shapes.Count >= MostShapes)
            {
                throw new FormatException($"it has more than {MostShapes} shapes: simplify it");
            }

            shapes.Add(new PathItem(path, own.X, own.Y, own.Scale, own.Fill, own.Stroke, own.StrokeWidth));
        }
    }

    private static string? PathOf(XElement e) =>
        e.Name.LocalName switch
        {
            "path" => (string?)e.Attribute("d") ?? "",
            "rect" => new Pen().Box(Of(e, "x"), Of(e, "y"), Of(e, "width"), Of(e, "height")).ToString(),
            "circle" => new Pen().Circle(Of(e, "cx"), Of(e, "cy"), Of(e, "r")).ToString(),
            "line" => new Pen().Move(Of(e, "x1"), Of(e, "y1")).Line(Of(e, "x2"), Of(e, "y2")).ToString(),
            "polygon" => "M" + Points(e) + "Z",
            "polyline" => "M" + Points(e),
            _ => null,
        };

    private static string Points(XElement e) =>
        string.Join(' ', Numbers((string?)e.Attribute("points") ?? "").Select(n => n.ToString(CultureInfo.InvariantCulture)));

    private static double Of(XElement e, string attribute) => Length((string?)e.Attribute(attribute));

    private static double Length(string? text) => Numbers(text ?? "").FirstOrDefault();

    /// <summary>The numbers in an attribute.</summary>
    internal static IEnumerable<double> Numbers(string text) =>
        text.Replace("px", " ", StringComparison.Ordinal)
            .Replace("mm", " ", StringComparison.Ordinal)
            .Split([' ', ',', '\n', '\r', '\t', '(', ')'], StringSplitOptions.RemoveEmptyEntries)
            .Select(part => double.TryParse(part, CultureInfo.InvariantCulture, out double n) && double.IsFinite(n) ? n : double.NaN)
            .Where(n => !double.IsNaN(n));
}

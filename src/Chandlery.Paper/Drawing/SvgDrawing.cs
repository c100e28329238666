using System.Globalization;
using System.Security;
using System.Text;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Scenes;
using SkiaSharp;

namespace Chandlery.Paper.Drawing;

/// <summary>
/// Draws a page as SVG in millimetres. Text becomes outlines, so that it looks the same wherever it is opened; each line
/// keeps its words in a title element.
/// </summary>
public static class SvgDrawing
{
    /// <summary>The SVG text.</summary>
    public static string Draw(Scene scene, string title)
    {
        var svg = new StringBuilder();
        string width = Number(scene.WidthMm);
        string height = Number(scene.HeightMm);
        svg.Append(
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width}mm\" height=\"{height}mm\" viewBox=\"0 0 {width} {height}\">\n"
        );
        svg.Append($"<title>{SecurityElement.Escape(title)}</title>\n<rect width=\"{width}\" height=\"{height}\" fill=\"#FFFFFF\"/>\n");
        foreach (SceneItem item in scene.Items)
        {
            switch (item)
            {
                case TextItem text:
                    AppendText(svg, text);
                    break;
                case PathItem path:
                    AppendPath(svg, path);
                    break;
                default:
                    throw new InvalidOperationException($"cannot draw {item.GetType().Name}");
            }
        }

        return svg.Append("</svg>\n").ToString();
    }

    private static void AppendText(StringBuilder svg, TextItem item)
    {
        Face face = Face.Of(item.Weight);
        double scale = item.SizeMm / face.UnitsPerEm;
        svg.Append(
            $"<g fill=\"{Hex(item.Ink)}\" transform=\"translate({Number(item.XMm)} {Number(item.BaselineMm)}) scale({Number(scale)})\"><title>{SecurityElement.Escape(item.Shaped.Text)}</title>"
        );
        for (int i = 0; i < item.Shaped.Glyphs.Length; i++)
        {
            string outline = face.Outline(item.Shaped.Glyphs[i]);
            if (outline.Length > 0)
            {
                svg.Append($"<path transform=\"translate({item.Shaped.Positions[i]} 0)\" d=\"{outline}\"/>");
            }
        }

        svg.Append("</g>\n");
    }

    private static void AppendPath(StringBuilder svg, PathItem item)
    {
        string fill = item.Fill is { } f ? Hex(f) : "none";
        string stroke = item.Stroke is { } s
            ? $" stroke=\"{Hex(s)}\" stroke-width=\"{Number(item.StrokeUnits)}\" stroke-linecap=\"round\" stroke-linejoin=\"round\""
            : "";
        svg.Append(
            $"<path transform=\"translate({Number(item.XMm)} {Number(item.YMm)}) scale({Number(item.ScaleMm)})\" fill=\"{fill}\"{stroke} d=\"{item.Path}\"/>\n"
        );
    }

    private static string Hex(Ink ink)
    {
        SKColor colour = Canvas.ColourOf(ink);
        return $"#{colour.Red:X2}{colour.Green:X2}{colour.Blue:X2}";
    }

    private static string Number(double value) => Math.Round(value, 6).ToString("0.######", CultureInfo.InvariantCulture);
}

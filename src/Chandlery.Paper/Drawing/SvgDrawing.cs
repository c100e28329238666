using System.Security;
using System.Text;
using Chandlery.Paper.Scenes;

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
        string width = SvgSurface.Number(scene.WidthMm);
        string height = SvgSurface.Number(scene.HeightMm);
        svg.Append(
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width}mm\" height=\"{height}mm\" viewBox=\"0 0 {width} {height}\">\n"
        );
        svg.Append($"<title>{SecurityElement.Escape(title)}</title>\n<rect width=\"{width}\" height=\"{height}\" fill=\"#FFFFFF\"/>\n");
        new SvgSurface(svg).DrawAll(scene.Items);
        return svg.Append("</svg>\n").ToString();
    }
}

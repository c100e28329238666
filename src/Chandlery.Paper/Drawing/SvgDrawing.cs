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
        var items = new StringBuilder();
        var surface = new SvgSurface(items);
        surface.DrawAll(scene.Items);
        string width = SvgSurface.Number(scene.WidthMm);
        string height = SvgSurface.Number(scene.HeightMm);

        // Editors of drawings know the older name of the reference; browsers know both.
        return new StringBuilder()
            .Append("<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\"")
            .Append($" width=\"{width}mm\" height=\"{height}mm\" viewBox=\"0 0 {width} {height}\">\n")
            .Append($"<title>{SecurityElement.Escape(title)}</title>\n<defs>\n")
            .Append(surface.Outlines)
            .Append($"</defs>\n<rect width=\"{width}\" height=\"{height}\" fill=\"#FFFFFF\"/>\n")
            .Append(items)
            .Append("</svg>\n")
            .ToString();
    }
}

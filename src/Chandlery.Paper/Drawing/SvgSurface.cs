using System.Globalization;
using System.Security;
using System.Text;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Scenes;
using SkiaSharp;

namespace Chandlery.Paper.Drawing;

/// <summary>Writes items of a scene as elements of an SVG.</summary>
/// <param name="svg">Receives the elements.</param>
internal sealed class SvgSurface(StringBuilder svg) : ISurface
{
    /// <inheritdoc/>
    public void Draw(TextItem text)
    {
        Face face = Face.Of(text.Weight);
        double scale = text.SizeMm / face.UnitsPerEm;
        svg.Append(
            $"<g fill=\"{Hex(text.Ink)}\" transform=\"translate({Number(text.XMm)} {Number(text.BaselineMm)}) scale({Number(scale)})\"><title>{SecurityElement.Escape(text.Shaped.Text)}</title>"
        );
        for (int i = 0; i < text.Shaped.Glyphs.Length; i++)
        {
            string outline = face.Outline(text.Shaped.Glyphs[i]);
            if (outline.Length > 0)
            {
                svg.Append($"<path transform=\"translate({text.Shaped.Positions[i]} 0)\" d=\"{outline}\"/>");
            }
        }

        svg.Append("</g>\n");
    }

    /// <inheritdoc/>
    public void Draw(PathItem path)
    {
        string fill = path.Fill is { } f ? Hex(f) : "none";
        string stroke = path.Stroke is { } s
            ? $" stroke=\"{Hex(s)}\" stroke-width=\"{Number(path.StrokeUnits)}\" stroke-linecap=\"round\" stroke-linejoin=\"round\""
            : "";
        svg.Append(
            $"<path transform=\"translate({Number(path.XMm)} {Number(path.YMm)}) scale({Number(path.ScaleMm)})\" fill=\"{fill}\"{stroke} d=\"{path.Path}\"/>\n"
        );
    }

    private static string Hex(Ink ink)
    {
        SKColor colour = Canvas.ColourOf(ink);
        return $"#{colour.Red:X2}{colour.Green:X2}{colour.Blue:X2}";
    }

    /// <summary>A number as SVG writes it.</summary>
    public static string Number(double value) => Math.Round(value, 6).ToString("0.######", CultureInfo.InvariantCulture);
}

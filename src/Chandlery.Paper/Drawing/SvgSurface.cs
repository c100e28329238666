using System.Globalization;
using System.Security;
using System.Text;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Drawing;

/// <summary>Writes items of a scene as elements of an SVG. A letter's outline is written once and used wherever it stands.</summary>
/// <param name="svg">Receives the elements.</param>
internal sealed class SvgSurface(StringBuilder svg) : ISurface
{
    private readonly Dictionary<(Face, ushort), string?> letters = [];
    private int clips;

    /// <summary>The outlines that the elements use, by their names.</summary>
    public StringBuilder Outlines { get; } = new();

    /// <inheritdoc/>
    public void Draw(TextItem text)
    {
        Face face = text.Face;
        double scale = text.SizeMm / face.UnitsPerEm;
        svg.Append(
            $"<g fill=\"{text.Ink.Hex}\" transform=\"translate({Number(text.XMm)} {Number(text.BaselineMm)}){Turn(text.AngleDegrees)} scale({Number(scale)})\"><title>{SecurityElement.Escape(text.Shaped.Text)}</title>"
        );
        for (int i = 0; i < text.Shaped.Glyphs.Length; i++)
        {
            if (Letter(face, text.Shaped.Glyphs[i]) is { } letter)
            {
                svg.Append($"<use x=\"{text.Shaped.Positions[i]}\" xlink:href=\"#{letter}\"/>");
            }
        }

        svg.Append("</g>\n");
    }

    /// <inheritdoc/>
    public void Draw(PathItem path)
    {
        string fill = path.Fill is { } f ? f.Hex : "none";
        string stroke = path.Stroke is { } s
            ? $" stroke=\"{s.Hex}\" stroke-width=\"{Number(path.StrokeUnits)}\" stroke-linecap=\"round\" stroke-linejoin=\"round\""
            : "";
        svg.Append(
            $"<path transform=\"translate({Number(path.XMm)} {Number(path.YMm)}) scale({Number(path.ScaleMm)})\" fill=\"{fill}\"{stroke} d=\"{path.Path}\"/>\n"
        );
    }

    /// <inheritdoc/>
    public void Draw(ClipItem clip)
    {
        string id = $"clip{++clips}";
        svg.Append(
            $"<clipPath id=\"{id}\"><path transform=\"translate({Number(clip.XMm)} {Number(clip.YMm)}){(clip.ScaleMm == 1 ? "" : $" scale({Number(clip.ScaleMm)})")}\" d=\"{clip.Path}\"/></clipPath>\n<g clip-path=\"url(#{id})\">\n"
        );
        DrawAll(clip.Items);
        svg.Append("</g>\n");
    }

    /// <inheritdoc/>
    public void Draw(PictureItem picture)
    {
        string data = Convert.ToBase64String(SkiaPictures.Png(picture.Pixels));
        svg.Append(
            $"<image x=\"{Number(picture.XMm)}\" y=\"{Number(picture.YMm)}\" width=\"{Number(picture.WidthMm)}\" height=\"{Number(picture.HeightMm)}\" preserveAspectRatio=\"none\" xlink:href=\"data:image/png;base64,{data}\"/>\n"
        );
    }

    /// <inheritdoc/>
    public void Draw(TaggedItem tagged)
    {
        if (tagged.Alternative is { } words)
        {
            svg.Append($"<g role=\"img\"><title>{SecurityElement.Escape(words)}</title>\n");
            DrawAll(tagged.Items);
            svg.Append("</g>\n");
        }
        else
        {
            DrawAll(tagged.Items);
        }
    }

    /// <summary>Writes items, from back to front.</summary>
    public void DrawAll(IReadOnlyList<SceneItem> items)
    {
        foreach (SceneItem item in items)
        {
            item.DrawOn(this);
        }
    }

    // Null for a blank.
    private string? Letter(Face face, ushort glyph)
    {
        if (!letters.TryGetValue((face, glyph), out string? letter))
        {
            string outline = face.Outline(glyph);
            letter = outline.Length > 0 ? $"letter{letters.Count + 1}" : null;
            letters.Add((face, glyph), letter);
            if (letter is not null)
            {
                Outlines.Append($"<path id=\"{letter}\" d=\"{outline}\"/>\n");
            }
        }

        return letter;
    }

    private static string Turn(double degrees) => degrees == 0 ? "" : $" rotate({Number(degrees)})";

    /// <summary>A number as SVG writes it.</summary>
    public static string Number(double value) => Math.Round(value, 6).ToString("0.######", CultureInfo.InvariantCulture);
}

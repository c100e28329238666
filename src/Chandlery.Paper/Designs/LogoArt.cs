using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Designs;

/// <summary>A logo, drawn with its left upper corner at the origin.</summary>
/// <param name="WidthMm">Width as drawn, millimetres.</param>
/// <param name="HeightMm">Height as drawn.</param>
/// <param name="Paths">Its paths; empty for a picture.</param>
/// <param name="Pixels">Its picture; null for paths.</param>
public sealed record LogoArt(double WidthMm, double HeightMm, IReadOnlyList<PathItem> Paths, PixelGrid? Pixels)
{
    /// <summary>The logo as large as a box allows, in its middle.</summary>
    public IEnumerable<SceneItem> In(Box box)
    {
        double scale = Math.Min(box.Width / WidthMm, box.Height / HeightMm);
        double left = box.CentreX - (WidthMm * scale / 2);
        double top = box.CentreY - (HeightMm * scale / 2);
        return Pixels is { } pixels
            ? [new PictureItem(pixels, left, top, WidthMm * scale, HeightMm * scale)]
            : Paths.Select(p => p with { XMm = left + (p.XMm * scale), YMm = top + (p.YMm * scale), ScaleMm = p.ScaleMm * scale });
    }
}

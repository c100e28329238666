using Chandlery.Paper.Drawing;
using Chandlery.Paper.Scenes;
using SkiaSharp;

namespace Chandlery.Paper.Pdf;

/// <summary>The box that things lie in, millimetres from the page's top left corner.</summary>
/// <param name="LeftMm">Left.</param>
/// <param name="TopMm">Top.</param>
/// <param name="RightMm">Right.</param>
/// <param name="BottomMm">Bottom.</param>
internal sealed record ItemBounds(double LeftMm, double TopMm, double RightMm, double BottomMm)
{
    /// <summary>The box of all these; null when there is nothing.</summary>
    public static ItemBounds? Of(IReadOnlyList<SceneItem> items)
    {
        ItemBounds? all = null;
        foreach (ItemBounds bounds in items.Select(Of).OfType<ItemBounds>())
        {
            all = all is null
                ? bounds
                : new ItemBounds(
                    Math.Min(all.LeftMm, bounds.LeftMm),
                    Math.Min(all.TopMm, bounds.TopMm),
                    Math.Max(all.RightMm, bounds.RightMm),
                    Math.Max(all.BottomMm, bounds.BottomMm)
                );
        }

        return all;
    }

    private static ItemBounds? Of(SceneItem item) =>
        item switch
        {
            TextItem { AngleDegrees: 0 } t => new(
                t.XMm,
                t.BaselineMm - (t.Face.Ascent * t.SizeMm),
                t.XMm + t.WidthMm,
                t.BaselineMm + (t.Face.Descent * t.SizeMm)
            ),
            TextItem t => Turned(t),
            PathItem p => OfPath(p.Path, p.XMm, p.YMm, p.ScaleMm, p.Stroke is null ? 0 : p.StrokeUnits * p.ScaleMm / 2),
            ClipItem c => OfPath(c.Path, c.XMm, c.YMm, c.ScaleMm, 0),
            PictureItem p => new(p.XMm, p.YMm, p.XMm + p.WidthMm, p.YMm + p.HeightMm),
            _ => Of(item.Inside),
        };

    // Wherever it is turned to, it lies in a square about its start.
    private static ItemBounds Turned(TextItem t)
    {
        double reach = t.WidthMm + (t.Face.Ascent * t.SizeMm);
        return new(t.XMm - reach, t.BaselineMm - reach, t.XMm + reach, t.BaselineMm + reach);
    }

    private static ItemBounds OfPath(string path, double x, double y, double scale, double beyond)
    {
        SKRect box = SkiaPaths.Of(path).TightBounds;
        return new(
            x + (box.Left * scale) - beyond,
            y + (box.Top * scale) - beyond,
            x + (box.Right * scale) + beyond,
            y + (box.Bottom * scale) + beyond
        );
    }
}

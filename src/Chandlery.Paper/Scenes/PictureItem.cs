namespace Chandlery.Paper.Scenes;

/// <summary>A picture without transparency.</summary>
/// <param name="Pixels">Its pixels.</param>
/// <param name="XMm">Left.</param>
/// <param name="YMm">Top.</param>
/// <param name="WidthMm">Width.</param>
/// <param name="HeightMm">Height.</param>
public sealed record PictureItem(PixelGrid Pixels, double XMm, double YMm, double WidthMm, double HeightMm) : SceneItem
{
    private const double MmPerInch = 25.4;

    /// <summary>Dots an inch as it is printed, in the direction in which there are fewer.</summary>
    public double DotsPerInch => Math.Min(Pixels.Width / WidthMm, Pixels.Height / HeightMm) * MmPerInch;

    /// <inheritdoc/>
    public override SceneItem Moved(double xMm, double yMm) => this with { XMm = XMm + xMm, YMm = YMm + yMm };

    /// <inheritdoc/>
    public override SceneItem Scaled(double by) =>
        this with
        {
            XMm = XMm * by,
            YMm = YMm * by,
            WidthMm = WidthMm * by,
            HeightMm = HeightMm * by,
        };

    /// <inheritdoc/>
    internal override void DrawOn(ISurface surface) => surface.Draw(this);
}

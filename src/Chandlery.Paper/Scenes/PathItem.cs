namespace Chandlery.Paper.Scenes;

/// <summary>A filled or stroked path, in units of its own that are scaled to millimetres.</summary>
/// <param name="Path">SVG path data.</param>
/// <param name="XMm">Where the path's origin lies.</param>
/// <param name="YMm">Where the path's origin lies.</param>
/// <param name="ScaleMm">Millimetres per unit of the path.</param>
/// <param name="Fill">Fill colour, or null.</param>
/// <param name="Stroke">Line colour, or null.</param>
/// <param name="StrokeUnits">Line width in units of the path.</param>
public sealed record PathItem(string Path, double XMm, double YMm, double ScaleMm, Ink? Fill, Ink? Stroke, double StrokeUnits) : SceneItem
{
    /// <inheritdoc/>
    public override SceneItem Moved(double xMm, double yMm) => this with { XMm = XMm + xMm, YMm = YMm + yMm };

    /// <inheritdoc/>
    public override SceneItem Scaled(double by) => this with { XMm = XMm * by, YMm = YMm * by, ScaleMm = ScaleMm * by };

    /// <inheritdoc/>
    public override SceneItem Reversed() => this with { Fill = Fill?.Reversed, Stroke = Stroke?.Reversed };

    /// <inheritdoc/>
    internal override void DrawOn(ISurface surface) => surface.Draw(this);
}

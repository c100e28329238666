using Chandlery.Paper.Fonts;

namespace Chandlery.Paper.Scenes;

/// <summary>A line of text.</summary>
/// <param name="Shaped">Its glyphs.</param>
/// <param name="Face">Its face.</param>
/// <param name="XMm">Start.</param>
/// <param name="BaselineMm">Baseline.</param>
/// <param name="SizeMm">Type size.</param>
/// <param name="Ink">Colour.</param>
public sealed record TextItem(ShapedText Shaped, Face Face, double XMm, double BaselineMm, double SizeMm, Ink Ink) : SceneItem
{
    /// <summary>By how much it is turned about its start, degrees clockwise.</summary>
    public double AngleDegrees { get; init; }

    /// <summary>Width of the line, millimetres.</summary>
    public double WidthMm => Shaped.Advance * SizeMm / Face.UnitsPerEm;

    /// <inheritdoc/>
    public override SceneItem Moved(double xMm, double yMm) => this with { XMm = XMm + xMm, BaselineMm = BaselineMm + yMm };

    /// <inheritdoc/>
    public override SceneItem Scaled(double by) => this with { XMm = XMm * by, BaselineMm = BaselineMm * by, SizeMm = SizeMm * by };

    /// <inheritdoc/>
    public override SceneItem Reversed() => this with { Ink = Ink.Reversed };

    /// <inheritdoc/>
    internal override void DrawOn(ISurface surface) => surface.Draw(this);
}

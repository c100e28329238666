namespace Chandlery.Paper.Scenes;

/// <summary>Things of which only what lies inside a path is seen.</summary>
/// <param name="Path">SVG path data.</param>
/// <param name="XMm">Where the path's origin lies.</param>
/// <param name="YMm">Where the path's origin lies.</param>
/// <param name="Items">The things, placed on the page and not on the path's origin.</param>
public sealed record ClipItem(string Path, double XMm, double YMm, IReadOnlyList<SceneItem> Items) : SceneItem
{
    /// <summary>Millimetres per unit of the path.</summary>
    public double ScaleMm { get; init; } = 1;

    /// <inheritdoc/>
    public override IReadOnlyList<SceneItem> Inside => Items;

    /// <inheritdoc/>
    public override SceneItem Moved(double xMm, double yMm) =>
        this with
        {
            XMm = XMm + xMm,
            YMm = YMm + yMm,
            Items = [.. Items.Select(i => i.Moved(xMm, yMm))],
        };

    /// <inheritdoc/>
    public override SceneItem Scaled(double by) =>
        this with
        {
            XMm = XMm * by,
            YMm = YMm * by,
            ScaleMm = ScaleMm * by,
            Items = [.. Items.Select(i => i.Scaled(by))],
        };

    /// <inheritdoc/>
    public override SceneItem Reversed() => this with { Items = [.. Items.Select(i => i.Reversed())] };

    /// <inheritdoc/>
    internal override void DrawOn(ISurface surface) => surface.Draw(this);
}

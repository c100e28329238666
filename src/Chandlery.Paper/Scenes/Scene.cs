namespace Chandlery.Paper.Scenes;

/// <summary>A finished page, ready to be drawn in any format.</summary>
/// <param name="WidthMm">Width.</param>
/// <param name="HeightMm">Height.</param>
/// <param name="Items">What is on it, from back to front.</param>
/// <param name="Marks">Where things with a legal size lie.</param>
public sealed record Scene(double WidthMm, double HeightMm, IReadOnlyList<SceneItem> Items, IReadOnlyList<Mark> Marks)
{
    /// <summary>How far the drawing goes on beyond each edge, millimetres: what is cut off, so that no white line is left.</summary>
    public double BleedMm { get; init; }

    /// <summary>The outline along which it is cut, as SVG path data in millimetres; null for the page's own edges.</summary>
    public string? CutPath { get; init; }

    /// <summary>All that is on it, from back to front, what groups hold included.</summary>
    public IEnumerable<SceneItem> All => Items.SelectMany(i => i.All);
}

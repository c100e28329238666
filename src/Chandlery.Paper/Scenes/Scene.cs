namespace Chandlery.Paper.Scenes;

/// <summary>A finished page, ready to be drawn in any format.</summary>
/// <param name="WidthMm">Width.</param>
/// <param name="HeightMm">Height.</param>
/// <param name="Items">What is on it, from back to front.</param>
/// <param name="Marks">Where things with a legal size lie.</param>
public sealed record Scene(double WidthMm, double HeightMm, IReadOnlyList<SceneItem> Items, IReadOnlyList<Mark> Marks);

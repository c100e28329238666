using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Designs;

/// <summary>Short ways to fill and stroke paths that are written in millimetres of the page.</summary>
internal static class Shading
{
    /// <summary>A filled path.</summary>
    public static PathItem Fill(Pen path, Ink ink) => new(path.ToString(), 0, 0, 1, ink, null, 0);

    /// <summary>A line along a path.</summary>
    public static PathItem Stroke(Pen path, Ink ink, double widthMm) => new(path.ToString(), 0, 0, 1, null, ink, widthMm);

    /// <summary>A filled path with a line around it.</summary>
    public static PathItem Both(Pen path, Ink fill, Ink stroke, double widthMm) => new(path.ToString(), 0, 0, 1, fill, stroke, widthMm);
}

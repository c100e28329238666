using Chandlery.Paper.Designs;

namespace Chandlery.Paper.Papers.Labels;

/// <summary>A front and a legal panel beside each other, or one above the other.</summary>
/// <param name="Front">Where the front lies.</param>
/// <param name="Law">Where the panel lies.</param>
/// <param name="Panel">The panel.</param>
internal sealed record FrontAndLaw(Box Front, Box Law, FittedLabel Panel)
{
    /// <summary>Width of both.</summary>
    public double WidthMm => Math.Max(Front.Right, Law.Right);

    /// <summary>Height of both.</summary>
    public double HeightMm => Math.Max(Front.Bottom, Law.Bottom);

    /// <summary>Area of both, square millimetres.</summary>
    public double AreaMm2 => WidthMm * HeightMm;

    /// <summary>The front on the left, the panel on the right.</summary>
    public static FrontAndLaw Beside(double artMm, FittedLabel panel) =>
        new(new Box(0, 0, artMm, panel.Shape.HeightMm), new Box(artMm, 0, panel.Shape.WidthMm, panel.Shape.HeightMm), panel);

    /// <summary>The front above, the panel below.</summary>
    public static FrontAndLaw Above(double artMm, FittedLabel panel) =>
        new(new Box(0, 0, panel.Shape.WidthMm, artMm), new Box(0, artMm, panel.Shape.WidthMm, panel.Shape.HeightMm), panel);
}

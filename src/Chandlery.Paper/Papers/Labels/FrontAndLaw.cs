namespace Chandlery.Paper.Papers.Labels;

/// <summary>A front and a legal panel beside each other.</summary>
/// <param name="ArtMm">Width of the front.</param>
/// <param name="Panel">The panel.</param>
/// <param name="HeightMm">Height of both.</param>
internal sealed record FrontAndLaw(double ArtMm, FittedLabel Panel, double HeightMm)
{
    /// <summary>Area of both, square millimetres.</summary>
    public double AreaMm2 => (ArtMm + Panel.Shape.WidthMm) * HeightMm;
}

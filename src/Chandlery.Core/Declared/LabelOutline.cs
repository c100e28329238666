namespace Chandlery.Core.Declared;

/// <summary>
/// A cut line of the maker's own, millimetres from the left and upper edge of the smallest rectangle around it, downwards.
/// </summary>
/// <param name="RingsMm">Its rings of corners, the outer edge first, then holes; a curve is given by points close to each other.</param>
/// <param name="Path">The same as SVG path data, with its curves as they were drawn.</param>
public sealed record LabelOutline(IReadOnlyList<IReadOnlyList<(double X, double Y)>> RingsMm, string Path)
{
    /// <summary>Width of the smallest rectangle around it.</summary>
    public double WidthMm => RingsMm[0].Max(c => c.X);

    /// <summary>Height of the smallest rectangle around it.</summary>
    public double HeightMm => RingsMm[0].Max(c => c.Y);
}

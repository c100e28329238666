namespace Chandlery.Core.Making.Layouts;

/// <summary>A place on a vessel's floor.</summary>
/// <param name="XMm">To the right, millimetres.</param>
/// <param name="YMm">Away from whoever looks, millimetres.</param>
public readonly record struct FloorPoint(double XMm, double YMm)
{
    /// <summary>How far another place is, millimetres.</summary>
    public double To(FloorPoint other) => Math.Sqrt(((XMm - other.XMm) * (XMm - other.XMm)) + ((YMm - other.YMm) * (YMm - other.YMm)));
}

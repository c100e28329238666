namespace Chandlery.Core.Making.Layouts;

/// <summary>A round floor with its middle at the origin.</summary>
/// <param name="RadiusMm">Its radius, millimetres.</param>
public sealed record RoundFloor(double RadiusMm) : Floor
{
    /// <inheritdoc/>
    public override double AreaSquareMm => Math.PI * RadiusMm * RadiusMm;

    /// <inheritdoc/>
    public override FloorPoint Lowest => new(-RadiusMm, -RadiusMm);

    /// <inheritdoc/>
    public override FloorPoint Highest => new(RadiusMm, RadiusMm);

    /// <inheritdoc/>
    internal override int WallCount => 1;

    /// <inheritdoc/>
    internal override void Measure(FloorPoint at, Span<WallDistance> into)
    {
        double fromMiddle = at.To(default);
        into[0] =
            fromMiddle > 0
                ? new WallDistance(RadiusMm - fromMiddle, -at.XMm / fromMiddle, -at.YMm / fromMiddle)
                : new WallDistance(RadiusMm, 0, 0);
    }
}

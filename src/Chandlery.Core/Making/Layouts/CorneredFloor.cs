namespace Chandlery.Core.Making.Layouts;

/// <summary>A floor with straight sides.</summary>
/// <param name="Corners">Its corners, one after the other around it; three at least.</param>
public sealed record CorneredFloor(IReadOnlyList<FloorPoint> Corners) : Floor
{
    /// <inheritdoc/>
    public override double AreaSquareMm => Math.Abs(Sides.Sum(s => (s.From.XMm * s.To.YMm) - (s.To.XMm * s.From.YMm))) / 2;

    /// <inheritdoc/>
    public override FloorPoint Lowest => new(Corners.Min(c => c.XMm), Corners.Min(c => c.YMm));

    /// <inheritdoc/>
    public override FloorPoint Highest => new(Corners.Max(c => c.XMm), Corners.Max(c => c.YMm));

    private IEnumerable<(FloorPoint From, FloorPoint To)> Sides => Corners.Select((c, i) => (c, Corners[(i + 1) % Corners.Count]));

    /// <inheritdoc/>
    internal override int WallCount => Corners.Count;

    /// <inheritdoc/>
    internal override void Measure(FloorPoint at, Span<WallDistance> into)
    {
        double sign = IsInside(at) ? 1 : -1;
        for (int i = 0; i < Corners.Count; i++)
        {
            FloorPoint foot = Foot(at, Corners[i], Corners[(i + 1) % Corners.Count]);
            double distance = at.To(foot);
            into[i] =
                distance > 0
                    ? new WallDistance(sign * distance, sign * (at.XMm - foot.XMm) / distance, sign * (at.YMm - foot.YMm) / distance)
                    : new WallDistance(0, 0, 0);
        }
    }

    // A line to the right crosses the wall an odd number of times from inside.
    private bool IsInside(FloorPoint at)
    {
        bool inside = false;
        for (int i = 0; i < Corners.Count; i++)
        {
            FloorPoint from = Corners[i];
            FloorPoint to = Corners[(i + 1) % Corners.Count];
            if (from.YMm > at.YMm != to.YMm > at.YMm)
            {
                double crossing = from.XMm + ((at.YMm - from.YMm) / (to.YMm - from.YMm) * (to.XMm - from.XMm));
                inside ^= at.XMm < crossing;
            }
        }

        return inside;
    }

    private static FloorPoint Foot(FloorPoint at, FloorPoint from, FloorPoint to)
    {
        double dx = to.XMm - from.XMm;
        double dy = to.YMm - from.YMm;
        double along = (((at.XMm - from.XMm) * dx) + ((at.YMm - from.YMm) * dy)) / ((dx * dx) + (dy * dy));
        double share = Math.Clamp(along, 0, 1);
        return new FloorPoint(from.XMm + (share * dx), from.YMm + (share * dy));
    }
}

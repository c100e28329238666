using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>The cross-section of a vessel of any outline with straight sides; a curve is given by points close to each other.</summary>
/// <param name="Corners">Its corners, one after the other around it; three at least.</param>
public sealed record OutlineSection(IReadOnlyList<(Millimetres X, Millimetres Y)> Corners) : CrossSection
{
    /// <inheritdoc/>
    public override Millimetres Perimeter => new(Sides.Sum(s => Length(s.To.X - s.From.X, s.To.Y - s.From.Y)));

    /// <inheritdoc/>
    public override double AreaSquareMillimetres => Math.Abs(Sides.Sum(s => (s.From.X * s.To.Y) - (s.To.X * s.From.Y))) / 2;

    /// <summary>The narrowest strip along one of its sides that holds all of it.</summary>
    public override Millimetres Across => new(Sides.Min(Strip));

    /// <summary>The two corners that stand farthest apart.</summary>
    public override Millimetres LongestAcross =>
        new(Corners.Max(a => Corners.Max(b => Length(a.X.Value - b.X.Value, a.Y.Value - b.Y.Value))));

    private IEnumerable<((double X, double Y) From, (double X, double Y) To)> Sides =>
        Corners.Select((c, i) => (Flat(c), Flat(Corners[(i + 1) % Corners.Count])));

    private double Strip(((double X, double Y) From, (double X, double Y) To) side)
    {
        (double x, double y) = (side.To.X - side.From.X, side.To.Y - side.From.Y);
        double length = Length(x, y);
        List<double> off = [.. Corners.Select(c => (((c.X.Value - side.From.X) * y) - ((c.Y.Value - side.From.Y) * x)) / length)];
        return off.Max() - off.Min();
    }

    private static (double X, double Y) Flat((Millimetres X, Millimetres Y) corner) => (corner.X.Value, corner.Y.Value);

    private static double Length(double x, double y) => Math.Sqrt((x * x) + (y * y));
}

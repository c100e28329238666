namespace Chandlery.Paper.Designs.Ornaments;

/// <summary>Where wicks stand in a round vessel of radius 1, for a picture: on one ring, or on an inner and an outer one.</summary>
internal static class WickPlaces
{
    private const int MostOnOneRing = 5;
    private const double OneRing = 0.5;
    private const double InnerRing = 0.32;
    private const double OuterRing = 0.7;

    /// <summary>The places.</summary>
    public static IReadOnlyList<(double X, double Y)> Of(int count)
    {
        if (count <= 1)
        {
            return [(0, 0)];
        }

        if (count <= MostOnOneRing)
        {
            return [.. Ring(count, OneRing, -Math.PI / 2)];
        }

        int inner = count <= 8 ? 1 : (int)Math.Round(count / 3.0);
        return
        [
            .. inner == 1 ? [(0, 0)] : Ring(inner, InnerRing, Math.PI / 4),
            .. Ring(count - inner, OuterRing, -Math.PI / 2 + (Math.PI / (count - inner))),
        ];
    }

    private static IEnumerable<(double X, double Y)> Ring(int count, double radius, double start) =>
        Enumerable
            .Range(0, count)
            .Select(i => (radius * Math.Cos(start + (2 * Math.PI * i / count)), radius * Math.Sin(start + (2 * Math.PI * i / count))));
}

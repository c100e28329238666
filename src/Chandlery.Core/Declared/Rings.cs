namespace Chandlery.Core.Declared;

/// <summary>What is true of closed lines with straight sides, each given by its corners one after the other.</summary>
internal static class Rings
{
    /// <summary>The area inside.</summary>
    public static double Area(IReadOnlyList<(double X, double Y)> ring) => Math.Abs(Sides(ring).Sum(s => Turn((0, 0), s.From, s.To))) / 2;

    /// <summary>Whether a place lies inside.</summary>
    public static bool Holds(IReadOnlyList<(double X, double Y)> ring, (double X, double Y) place) =>
        Sides(ring)
            .Count(s =>
                (s.From.Y > place.Y) != (s.To.Y > place.Y)
                && place.X < s.From.X + ((place.Y - s.From.Y) / (s.To.Y - s.From.Y) * (s.To.X - s.From.X))
            ) % 2
        == 1;

    /// <summary>Whether two sides that are no neighbours meet, of one ring or of two.</summary>
    public static bool Cross(IReadOnlyList<IReadOnlyList<(double X, double Y)>> rings)
    {
        List<(int Ring, int At, int Of, (double X, double Y) From, (double X, double Y) To)> sides =
        [
            .. rings.SelectMany((ring, r) => Sides(ring).Select((s, i) => (r, i, ring.Count, s.From, s.To))),
        ];
        for (int i = 0; i < sides.Count; i++)
        {
            for (int j = i + 1; j < sides.Count; j++)
            {
                bool areNeighbours =
                    sides[i].Ring == sides[j].Ring && (sides[j].At - sides[i].At == 1 || sides[j].At - sides[i].At == sides[i].Of - 1);
                if (!areNeighbours && Meet(sides[i].From, sides[i].To, sides[j].From, sides[j].To))
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>Its sides.</summary>
    public static IEnumerable<((double X, double Y) From, (double X, double Y) To)> Sides(IReadOnlyList<(double X, double Y)> ring) =>
        ring.Select((corner, i) => (corner, ring[(i + 1) % ring.Count]));

    private static bool Meet((double X, double Y) a, (double X, double Y) b, (double X, double Y) c, (double X, double Y) d) =>
        Math.Sign(Turn(a, b, c)) != Math.Sign(Turn(a, b, d)) && Math.Sign(Turn(c, d, a)) != Math.Sign(Turn(c, d, b));

    private static double Turn((double X, double Y) a, (double X, double Y) b, (double X, double Y) c) =>
        ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X));
}

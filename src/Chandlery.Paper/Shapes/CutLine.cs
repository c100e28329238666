using Chandlery.Core.Declared;
using Chandlery.Paper.Drawing;

namespace Chandlery.Paper.Shapes;

/// <summary>The edge of a label that is neither rectangle nor circle: where lines may stand inside it.</summary>
internal sealed class CutLine
{
    private const int ArchSides = 64;
    private const double StepMm = 0.25;
    private const int BoxSteps = 40;

    // Lines that changed from one side of a hole to the other would be lost to the eye.
    private const double LeastShare = 0.75;

    private readonly IReadOnlyList<IReadOnlyList<(double X, double Y)>> rings;
    private readonly List<((double X, double Y) From, (double X, double Y) To)> sides;

    private CutLine(IReadOnlyList<IReadOnlyList<(double X, double Y)>> rings, string path)
    {
        this.rings = rings;
        Path = path;
        sides = [.. rings.SelectMany(Rings.Sides)];
    }

    /// <summary>The edge as SVG path data, millimetres.</summary>
    public string Path { get; }

    /// <summary>The area inside, less its holes.</summary>
    public double AreaMm2 => AreaOf(rings);

    /// <summary>The area inside an outline, less its holes.</summary>
    public static double AreaOf(LabelOutline outline) => AreaOf(outline.RingsMm);

    private static double AreaOf(IReadOnlyList<IReadOnlyList<(double X, double Y)>> rings) =>
        Rings.Area(rings[0]) - rings.Skip(1).Sum(Rings.Area);

    /// <summary>The cut line of a label; null for shapes that have none of their own.</summary>
    public static CutLine? Of(LabelRequest request) =>
        request switch
        {
            { Form: LabelForm.Outline, Outline: { } outline } => new CutLine(outline.RingsMm, outline.Path),
            { Form: LabelForm.Arch } => Arch(request.Size.Width.Value, request.Size.Height.Value),
            _ => null,
        };

    /// <summary>The cut line that a path describes.</summary>
    /// <param name="path">SVG path data in millimetres.</param>
    public static CutLine Of(string path) => new([.. FlatRings.Of(SkiaPaths.Of(path)).OrderByDescending(Rings.Area)], path);

    /// <summary>True when a box lies inside and every point of it stays a distance from the edge.</summary>
    public bool Holds(double left, double top, double right, double bottom, double distance) =>
        Free(top, bottom, distance).Exists(f => f.Left <= left && right <= f.Right);

    /// <summary>What lies between two heights, from the upper one down, without a line to be cut; null where there is nothing.</summary>
    public LabelOutline? Between(double top, double bottom)
    {
        List<IReadOnlyList<(double X, double Y)>> parts =
        [
            .. rings
                .Select(r => Above(Above([.. r.Select(c => (c.X, c.Y - top))], 0, isKeptBelow: true), bottom - top, isKeptBelow: false))
                .Where(r => r.Count > 2 && Rings.Area(r) > 0),
        ];
        return parts.Count == 0 ? null : new LabelOutline(parts, "");
    }

    /// <summary>How far a box stays from the edge, millimetres; 0 when it crosses it or lies outside.</summary>
    public double DistanceOf((double Left, double Top, double Right, double Bottom) box)
    {
        if (!IsInside((box.Left + box.Right) / 2, (box.Top + box.Bottom) / 2))
        {
            return 0;
        }

        double least = double.PositiveInfinity;
        foreach (((double X, double Y) from, (double X, double Y) to) in sides)
        {
            // What is further off than the nearest side so far is soon told.
            double across = Math.Max(box.Left - Math.Max(from.X, to.X), Math.Min(from.X, to.X) - box.Right);
            double down = Math.Max(box.Top - Math.Max(from.Y, to.Y), Math.Min(from.Y, to.Y) - box.Bottom);
            if (Math.Max(across, down) < least)
            {
                least = Math.Min(least, across <= 0 && down <= 0 && Crosses(box, from, to) ? 0 : Distance(box, from, to));
            }
        }

        return least;
    }

    /// <summary>
    /// The widest stretch of a line between two heights of which every point stays a distance inside the edge; none where there is
    /// no room. Nothing reads on across a hole or a bay, so where one parts the line in the middle, none stands there at all.
    /// </summary>
    public IReadOnlyList<(double Left, double Right)> Widest(double from, double to, double distance)
    {
        List<(double Left, double Right)> free = Free(from, to, distance);
        if (free.Count == 0)
        {
            return [];
        }

        (double Left, double Right) widest = free.MaxBy(f => f.Right - f.Left);
        return widest.Right - widest.Left >= LeastShare * free.Sum(f => f.Right - f.Left) ? [widest] : [];
    }

    /// <summary>True when a rectangle lies whole inside, upright or on its side.</summary>
    public bool Holds(double widthMm, double heightMm) => HoldsUpright(widthMm, heightMm) || HoldsUpright(heightMm, widthMm);

    /// <summary>The largest upright box inside, looked for in steps.</summary>
    public (double X, double Y, double Width, double Height) LargestBox()
    {
        double bottom = rings[0].Max(c => c.Y);
        double step = bottom / BoxSteps;
        (double X, double Y, double Width, double Height) best = (0, 0, 0, 0);
        for (int i = 0; i < BoxSteps; i++)
        {
            for (int j = i + 1; j <= BoxSteps; j++)
            {
                double height = (j - i) * step;
                foreach ((double left, double right) in Widest(i * step, j * step, 0))
                {
                    if ((right - left) * height > best.Width * best.Height)
                    {
                        best = (left, i * step, right - left, height);
                    }
                }
            }
        }

        return best;
    }

    // Inscribed chords stand for the half circle, so that nothing reaches beyond it.
    private static CutLine Arch(double width, double height)
    {
        double r = width / 2;
        var ring = new List<(double X, double Y)> { (width, height), (0, height) };
        for (int i = 0; i <= ArchSides; i++)
        {
            double angle = Math.PI * (1 + ((double)i / ArchSides));
            ring.Add((r + (r * Math.Cos(angle)), r + (r * Math.Sin(angle))));
        }

        return new CutLine(
            [ring],
            FormattableString.Invariant(
                $"M0 {height:0.###} V{r:0.###} A{r:0.###} {r:0.###} 0 0 1 {width:0.###} {r:0.###} V{height:0.###} Z"
            )
        );
    }

    private bool HoldsUpright(double width, double height)
    {
        const double slack = 1e-6;
        double bottom = rings[0].Max(c => c.Y);
        IEnumerable<double> tops = Enumerable
            .Range(0, (int)Math.Ceiling(bottom / StepMm))
            .Select(i => i * StepMm)
            .Concat(sides.Select(s => s.From.Y))
            .Concat(sides.Select(s => s.From.Y - height));
        return tops.Where(top => top >= -slack && top + height <= bottom + slack)
            .Any(top => Free(top + slack, top + height - slack, 0).Exists(f => f.Right - f.Left >= width - slack));
    }

    // What sides take out of the strip; between those, the middle tells whether it is inside.
    private List<(double Left, double Right)> Free(double from, double to, double distance)
    {
        List<(double Left, double Right)> taken =
        [
            .. sides.Select(s => Shadow(s.From, s.To, from, to, distance)).OfType<(double Left, double Right)>().OrderBy(s => s.Left),
        ];
        var free = new List<(double Left, double Right)>();
        double left = double.NegativeInfinity;
        foreach ((double Left, double Right) next in taken)
        {
            if (next.Left > left && !double.IsInfinity(left) && IsInside((left + next.Left) / 2, (from + to) / 2))
            {
                free.Add((left, next.Left));
            }

            left = Math.Max(left, next.Right);
        }

        return free;
    }

    // The part of a ring on one side of a level line; where the ring leaves and comes back, the line itself joins the two places.
    private static IReadOnlyList<(double X, double Y)> Above(IReadOnlyList<(double X, double Y)> ring, double line, bool isKeptBelow)
    {
        var kept = new List<(double X, double Y)>();
        foreach (((double X, double Y) from, (double X, double Y) to) in Rings.Sides(ring))
        {
            bool keepsFrom = isKeptBelow ? from.Y >= line : from.Y <= line;
            bool keepsTo = isKeptBelow ? to.Y >= line : to.Y <= line;
            if (keepsFrom)
            {
                kept.Add(from);
            }

            if (keepsFrom != keepsTo)
            {
                kept.Add((from.X + ((line - from.Y) / (to.Y - from.Y) * (to.X - from.X)), line));
            }
        }

        return kept;
    }

    // Of a side that misses the box, the nearest point is one of its ends, or a corner of the box faces it.
    private static double Distance(
        (double Left, double Top, double Right, double Bottom) box,
        (double X, double Y) from,
        (double X, double Y) to
    )
    {
        double ends = Math.Min(FromBox(box, from), FromBox(box, to));
        double upper = Math.Min(FromSide((box.Left, box.Top), from, to), FromSide((box.Right, box.Top), from, to));
        double lower = Math.Min(FromSide((box.Left, box.Bottom), from, to), FromSide((box.Right, box.Bottom), from, to));
        return Math.Min(ends, Math.Min(upper, lower));
    }

    private static double FromBox((double Left, double Top, double Right, double Bottom) box, (double X, double Y) p) =>
        double.Hypot(Math.Max(0, Math.Max(box.Left - p.X, p.X - box.Right)), Math.Max(0, Math.Max(box.Top - p.Y, p.Y - box.Bottom)));

    private static double FromSide((double X, double Y) p, (double X, double Y) from, (double X, double Y) to)
    {
        double x = to.X - from.X;
        double y = to.Y - from.Y;
        double square = (x * x) + (y * y);
        double t = square == 0 ? 0 : Math.Clamp((((p.X - from.X) * x) + ((p.Y - from.Y) * y)) / square, 0, 1);
        return double.Hypot(p.X - from.X - (t * x), p.Y - from.Y - (t * y));
    }

    // Clips the side to the box, edge by edge: something is left when it crosses.
    private static bool Crosses(
        (double Left, double Top, double Right, double Bottom) box,
        (double X, double Y) from,
        (double X, double Y) to
    )
    {
        double first = 0;
        double last = 1;
        foreach (
            (double step, double room) in new[]
            {
                (from.X - to.X, from.X - box.Left),
                (to.X - from.X, box.Right - from.X),
                (from.Y - to.Y, from.Y - box.Top),
                (to.Y - from.Y, box.Bottom - from.Y),
            }
        )
        {
            if (step == 0)
            {
                if (room < 0)
                {
                    return false;
                }
            }
            else if (step < 0)
            {
                first = Math.Max(first, room / step);
            }
            else
            {
                last = Math.Min(last, room / step);
            }
        }

        return first <= last;
    }

    // A line from there to the left meets the edge an odd number of times; within holes, which lie inside, it meets it once more.
    private bool IsInside(double x, double y)
    {
        bool isInside = false;
        foreach (((double X, double Y) from, (double X, double Y) to) in sides)
        {
            if ((from.Y > y) != (to.Y > y) && x < from.X + ((y - from.Y) / (to.Y - from.Y) * (to.X - from.X)))
            {
                isInside = !isInside;
            }
        }

        return isInside;
    }

    // How far a side reaches left and right within a strip when it is as thick as the distance: the side and its discs make a convex
    // figure, whose extremes in the strip lie at the side's ends, at the strip's edges, or where the disc's edge is steepest.
    private static (double Left, double Right)? Shadow(
        (double X, double Y) a,
        (double X, double Y) b,
        double from,
        double to,
        double distance
    )
    {
        if (Math.Max(a.Y, b.Y) < from - distance || Math.Min(a.Y, b.Y) > to + distance)
        {
            return null;
        }

        double left = double.PositiveInfinity;
        double right = double.NegativeInfinity;
        double length = Math.Sqrt(((b.X - a.X) * (b.X - a.X)) + ((b.Y - a.Y) * (b.Y - a.Y)));
        double lean = length == 0 ? 0 : distance * Math.Abs(b.X - a.X) / length;
        foreach (double y in new[] { a.Y, b.Y, from - distance, from - lean, from, to, to + lean, to + distance })
        {
            double t = b.Y == a.Y ? 0 : (y - a.Y) / (b.Y - a.Y);
            if (y == b.Y)
            {
                t = 1;
            }

            if (t is < 0 or > 1)
            {
                continue;
            }

            double x = a.X + (t * (b.X - a.X));
            double at = a.Y + (t * (b.Y - a.Y));
            double off = Math.Max(0, Math.Max(from - at, at - to));
            if (off > distance + 1e-9)
            {
                continue;
            }

            double reach = Math.Sqrt(Math.Max(0, (distance * distance) - (off * off)));
            left = Math.Min(left, x - reach);
            right = Math.Max(right, x + reach);
        }

        // A side that lies level has both its ends in or out of reach.
        return right >= left ? (left, right) : null;
    }
}

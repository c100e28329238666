namespace Chandlery.Paper.Layout;

/// <summary>
/// The room that text may stand in: for each line the stretches that are free, less what floats occupy. A line that
/// crosses a hole has two stretches and reads on across it.
/// </summary>
/// <param name="topMm">Upper edge.</param>
/// <param name="bottomMm">Lower edge; infinite when only the need is measured.</param>
/// <param name="stretches">Free stretches for a line between two heights, from left to right.</param>
internal sealed class Region(double topMm, double bottomMm, Func<double, double, IReadOnlyList<(double Left, double Right)>> stretches)
{
    private readonly List<(double Right, double Bottom)> floats = [];

    public double TopMm => topMm;

    public double BottomMm => bottomMm;

    /// <summary>True for shapes that are as wide as their height allows, where lines look best in the middle.</summary>
    public bool IsRound { get; init; }

    /// <summary>A rectangle.</summary>
    public static Region Rectangle(double left, double top, double right, double bottom)
    {
        IReadOnlyList<(double Left, double Right)> whole = [(left, right)];
        return new Region(top, bottom, (_, _) => whole);
    }

    /// <summary>Takes the upper left corner down to a height out of the room.</summary>
    public void FloatAtTopLeft(double rightMm, double bottomMm) => floats.Add((rightMm, bottomMm));

    /// <summary>The free stretches of a line between two heights; empty where none can stand.</summary>
    public IReadOnlyList<(double Left, double Right)> Stretches(double fromMm, double toMm)
    {
        IReadOnlyList<(double Left, double Right)> free = stretches(fromMm, toMm);
        double left = double.NegativeInfinity;
        foreach ((double right, double bottom) in floats)
        {
            if (fromMm < bottom)
            {
                left = Math.Max(left, right);
            }
        }

        return double.IsNegativeInfinity(left)
            ? free
            : [.. free.Select(f => (Math.Max(f.Left, left), f.Right)).Where(f => f.Item1 < f.Right)];
    }

    /// <summary>The widest free stretch of a line; null where none can stand.</summary>
    public (double Left, double Right)? Edges(double fromMm, double toMm)
    {
        IReadOnlyList<(double Left, double Right)> free = Stretches(fromMm, toMm);
        return free.Count == 0 ? null : free.MaxBy(f => f.Right - f.Left);
    }

    /// <summary>True where a corner has been taken out.</summary>
    public bool HasFloats => floats.Count > 0;

    /// <summary>Lower end of the floats.</summary>
    public double FloatsEndMm => floats.Count == 0 ? topMm : floats.Max(f => f.Bottom);
}

namespace Chandlery.Paper.Layout;

/// <summary>The room that text may stand in: for each height a left and a right edge, less what floats occupy.</summary>
/// <param name="topMm">Upper edge.</param>
/// <param name="bottomMm">Lower edge; infinite when only the need is measured.</param>
/// <param name="edges">Left and right edge that hold for a whole line between two heights; null where no line can stand.</param>
internal sealed class Region(double topMm, double bottomMm, Func<double, double, (double Left, double Right)?> edges)
{
    private readonly List<(double Right, double Bottom)> floats = [];

    public double TopMm => topMm;

    public double BottomMm => bottomMm;

    /// <summary>A rectangle.</summary>
    public static Region Rectangle(double left, double top, double right, double bottom) => new(top, bottom, (_, _) => (left, right));

    /// <summary>Takes the upper left corner down to a height out of the room.</summary>
    public void FloatAtTopLeft(double rightMm, double bottomMm) => floats.Add((rightMm, bottomMm));

    /// <summary>The edges for a line between two heights; null where none can stand.</summary>
    public (double Left, double Right)? Edges(double fromMm, double toMm)
    {
        if (edges(fromMm, toMm) is not { } free)
        {
            return null;
        }

        double left = free.Left;
        foreach ((double right, double bottom) in floats)
        {
            if (fromMm < bottom)
            {
                left = Math.Max(left, right);
            }
        }

        return left < free.Right ? (left, free.Right) : null;
    }

    /// <summary>Lower end of the floats.</summary>
    public double FloatsEndMm => floats.Count == 0 ? topMm : floats.Max(f => f.Bottom);
}

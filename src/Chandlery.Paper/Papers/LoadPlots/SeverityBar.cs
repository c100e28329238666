using System.Text;
using Chandlery.Core.Asked.Ceilings;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Papers.LoadPlots;

/// <summary>A bar whose shade and pattern say how grave a consequence is, also without colour.</summary>
internal static class SeverityBar
{
    private const double OutlineMm = 0.3;
    private const double StripeMm = 0.35;

    private static readonly Ink Light = Ink.White.Towards(Ink.Black, 0.12);
    private static readonly Ink Middle = Ink.White.Towards(Ink.Black, 0.35);
    private static readonly Ink Dark = Ink.White.Towards(Ink.Black, 0.65);

    /// <summary>The bar: a statement is nearly white, a class grey, a signal word darker, a broken limit black with stripes.</summary>
    /// <param name="kind">What it stands for.</param>
    /// <param name="x">Left edge, millimetres.</param>
    /// <param name="y">Upper edge.</param>
    /// <param name="width">Width.</param>
    /// <param name="height">Height.</param>
    public static IEnumerable<SceneItem> Draw(ConsequenceKind kind, double x, double y, double width, double height)
    {
        string box = Strokes.BoxPath(width, height);
        (Ink ground, Ink? stripes, double apart) = kind switch
        {
            ConsequenceKind.Statement => (Light, null, 0),
            ConsequenceKind.HazardClass => (Middle, null, 0.0),
            ConsequenceKind.SignalWord => (Dark, (Ink?)Ink.White, 3.2),
            _ => (Ink.Black, Ink.White, 1.6),
        };
        yield return new PathItem(box, x, y, 1, ground, null, 0);
        if (stripes is not null)
        {
            yield return new ClipItem(box, x, y, [new PathItem(Stripes(width, height, apart), x, y, 1, null, stripes, StripeMm)]);
        }

        yield return new PathItem(box, x, y, 1, null, Ink.Black, OutlineMm);
    }

    // Slanted lines from below the left edge to above the right one.
    private static string Stripes(double width, double height, double apart)
    {
        var path = new StringBuilder();
        for (double from = -height; from < width; from += apart)
        {
            path.Append(FormattableString.Invariant($"M{from:0.##} {height:0.##} L{from + height:0.##} 0 "));
        }

        return path.ToString();
    }
}

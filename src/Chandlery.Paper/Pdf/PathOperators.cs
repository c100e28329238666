using System.Collections.Concurrent;
using Chandlery.Paper.Drawing;
using SkiaSharp;

namespace Chandlery.Paper.Pdf;

/// <summary>SVG path data as a PDF's operators (ISO 32000-1, 8.5.2); results are kept, since labels draw the same symbols again.</summary>
internal static class PathOperators
{
    private const int MostKept = 2_000;

    private static readonly ConcurrentDictionary<(string Path, int Decimals), byte[]> Known = new();

    /// <summary>The operators, in units of the path.</summary>
    /// <param name="path">SVG path data.</param>
    /// <param name="scaleMm">Millimetres per unit: how fine the numbers must be.</param>
    /// <exception cref="FormatException">The text is no path data.</exception>
    public static byte[] Of(string path, double scaleMm)
    {
        int decimals = Math.Clamp((int)Math.Ceiling(Math.Log10(scaleMm * 1000)), 0, 5);
        if (Known.TryGetValue((path, decimals), out byte[]? known))
        {
            return known;
        }

        if (Known.Count > MostKept)
        {
            Known.Clear();
        }

        return Known.GetOrAdd((path, decimals), key => Write(SkiaPaths.Of(key.Path), key.Decimals));
    }

    private static byte[] Write(SKPath path, int decimals)
    {
        var written = new ByteText();
        using SKPath.RawIterator steps = path.CreateRawIterator();
        var points = new SKPoint[4];
        for (SKPathVerb verb = steps.Next(points); verb != SKPathVerb.Done; verb = steps.Next(points))
        {
            switch (verb)
            {
                case SKPathVerb.Move:
                    Points(written, "m ", decimals, points[0]);
                    break;
                case SKPathVerb.Line:
                    Points(written, "l ", decimals, points[1]);
                    break;
                case SKPathVerb.Quad:
                    Points(
                        written,
                        "c ",
                        decimals,
                        Between(points[0], points[1], 2f / 3),
                        Between(points[2], points[1], 2f / 3),
                        points[2]
                    );
                    break;
                case SKPathVerb.Cubic:
                    Points(written, "c ", decimals, points[1], points[2], points[3]);
                    break;
                case SKPathVerb.Close:
                    written.Put("h ");
                    break;
                default:
                    throw new InvalidOperationException($"a path holds a step that no PDF knows: {verb}");
            }
        }

        return written.Written.ToArray();
    }

    private static void Points(ByteText written, string operation, int decimals, params ReadOnlySpan<SKPoint> points)
    {
        foreach (SKPoint point in points)
        {
            written.Spaced(point.X, decimals).Spaced(point.Y, decimals);
        }

        written.Put(operation);
    }

    private static SKPoint Between(SKPoint from, SKPoint to, float share) =>
        new(from.X + ((to.X - from.X) * share), from.Y + ((to.Y - from.Y) * share));
}

using System.Collections.Concurrent;
using SkiaSharp;

namespace Chandlery.Paper.Drawing;

/// <summary>SVG path data as the engine's paths; results are kept, since labels draw the same symbols again and again.</summary>
internal static class SkiaPaths
{
    // Symbols are few; QR and bar codes are new on every label and would fill the memory of a long run.
    private const int MostKept = 2_000;

    private static readonly ConcurrentDictionary<string, SKPath> Known = new();

    /// <summary>The path; nobody may change it.</summary>
    /// <exception cref="FormatException">The text is no path data.</exception>
    public static SKPath Of(string data)
    {
        if (Known.TryGetValue(data, out SKPath? known))
        {
            return known;
        }

        if (Known.Count > MostKept)
        {
            Known.Clear();
        }

        return Known.GetOrAdd(data, Parse);
    }

    /// <summary>The same path elsewhere.</summary>
    /// <exception cref="FormatException">The text is no path data.</exception>
    public static string Moved(string data, double x, double y)
    {
        using var moved = new SKPath(Of(data));
        moved.Transform(SKMatrix.CreateTranslation((float)x, (float)y));
        return moved.ToSvgPathData();
    }

    /// <summary>The same path larger or smaller, about its origin.</summary>
    /// <exception cref="FormatException">The text is no path data.</exception>
    public static string Scaled(string data, double by)
    {
        if (by == 1)
        {
            return data;
        }

        using var scaled = new SKPath(Of(data));
        scaled.Transform(SKMatrix.CreateScale((float)by, (float)by));
        return scaled.ToSvgPathData();
    }

    private static SKPath Parse(string data)
    {
        using SKPath parsed = SKPath.ParseSvgPathData(data) ?? throw new FormatException($"this is no path: {data}");
        return WithoutConics(parsed);
    }

    // A PDF knows no conics. Left to itself, the engine writes a quarter of a circle as many short curves; one cubic strays from
    // it by less than 0.03 % of the radius.
    private static SKPath WithoutConics(SKPath path)
    {
        using var builder = new SKPathBuilder { FillType = path.FillType };
        using SKPath.RawIterator steps = path.CreateRawIterator();
        var points = new SKPoint[4];
        for (SKPathVerb verb = steps.Next(points); verb != SKPathVerb.Done; verb = steps.Next(points))
        {
            switch (verb)
            {
                case SKPathVerb.Move:
                    builder.MoveTo(points[0]);
                    break;
                case SKPathVerb.Line:
                    builder.LineTo(points[1]);
                    break;
                case SKPathVerb.Quad:
                    builder.QuadTo(points[1], points[2]);
                    break;
                case SKPathVerb.Conic:
                    float weight = steps.ConicWeight();
                    float towards = 4 * weight / (3 * (1 + weight));
                    builder.CubicTo(Between(points[0], points[1], towards), Between(points[2], points[1], towards), points[2]);
                    break;
                case SKPathVerb.Cubic:
                    builder.CubicTo(points[1], points[2], points[3]);
                    break;
                default:
                    builder.Close();
                    break;
            }
        }

        return builder.Detach();
    }

    private static SKPoint Between(SKPoint from, SKPoint to, float share) =>
        new(from.X + ((to.X - from.X) * share), from.Y + ((to.Y - from.Y) * share));
}

using System.Text;
using Chandlery.Core.Quantities;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Blocks;

/// <summary>A plot of lines from zero on, with the limit that they shall keep. Marks tell the lines apart without colour.</summary>
/// <param name="Title">What runs upwards.</param>
/// <param name="Limit">What no value shall exceed; null for none.</param>
/// <param name="Lines">The lines.</param>
internal sealed record LinePlot(string Title, double? Limit, IReadOnlyList<PlotLine> Lines)
{
    /// <summary>Type size.</summary>
    public const double TypeMm = 2.6;

    /// <summary>Half the side of a mark.</summary>
    public const double MarkMm = 0.8;

    private const double LineMm = 0.3;
    private const double HeadMm = 7;
    private const double FootMm = 10;
    private const double FiguresMm = 8;
    private const double RoomAbove = 1.15;
    private const int MostFigures = 6;

    // A square, a square on its point, a triangle, one on its head; then the same, hollow.
    private static readonly string[] Marks =
    [
        "M-0.7 -0.7 H0.7 V0.7 H-0.7 Z",
        "M0 -1 L1 0 L0 1 L-1 0 Z",
        "M0 -0.9 L0.9 0.7 H-0.9 Z",
        "M0 0.9 L0.9 -0.7 H-0.9 Z",
    ];

    /// <summary>The mark of a line.</summary>
    public static PathItem MarkAt(int line, double x, double y)
    {
        bool isHollow = line / Marks.Length % 2 == 1;
        return new PathItem(Marks[line % Marks.Length], x, y, MarkMm, isHollow ? Ink.White : Ink.Black, Ink.Black, LineMm);
    }

    /// <summary>The plot.</summary>
    /// <param name="axis">What runs to the right.</param>
    /// <param name="x">Left edge, millimetres.</param>
    /// <param name="y">Upper edge.</param>
    /// <param name="width">Width.</param>
    /// <param name="height">Height.</param>
    public IEnumerable<SceneItem> Draw(string axis, double x, double y, double width, double height)
    {
        List<(double At, double? Value)> all = [.. Lines.SelectMany(l => l.Points)];
        double left = x + FiguresMm;
        double right = x + width - MarkMm;
        double top = y + HeadMm;
        double bottom = y + height - FootMm;
        yield return Strokes.Text(Title, Weight.Bold, x, y + 3, TypeMm, Ink.Black);
        if (!all.Exists(p => p.Value is not null))
        {
            yield return Strokes.Text("not measured", Weight.Regular, left, (top + bottom) / 2, TypeMm, Ink.Black);
            yield break;
        }

        double lastAt = all.Max(p => p.At);
        double highest = Math.Max(Math.Max(all.Max(p => p.Value) ?? 0, Limit ?? 0), 1) * RoomAbove;
        double X(double at) => left + ((right - left) * at / lastAt);
        double Y(double value) => bottom - ((bottom - top) * value / highest);
        yield return Strokes.Line(left, bottom, right, bottom, Ink.Black, LineMm);
        yield return Strokes.Line(left, top, left, bottom, Ink.Black, LineMm);
        foreach (double at in PlotScale.Ticks(lastAt, MostFigures))
        {
            TextItem figure = Strokes.Text(Figure(at), Weight.Regular, 0, bottom + 4.5, TypeMm, Ink.Black);
            yield return Strokes.Line(X(at), bottom, X(at), bottom + 1.2, Ink.Black, LineMm);
            yield return figure.Moved(X(at) - (figure.WidthMm / 2), 0);
        }

        foreach (double value in PlotScale.Ticks(highest, MostFigures))
        {
            TextItem figure = Strokes.Text(Figure(value), Weight.Regular, 0, Y(value) + (TypeMm * 0.36), TypeMm, Ink.Black);
            yield return Strokes.Line(left - 1.2, Y(value), left, Y(value), Ink.Black, LineMm);
            yield return figure.Moved(left - 2 - figure.WidthMm, 0);
        }

        yield return Strokes.Text(axis, Weight.Regular, left, bottom + 9, TypeMm, Ink.Black);
        if (Limit is { } limit)
        {
            yield return Strokes.Line(left, Y(limit), right, Y(limit), Ink.SignalRed, LineMm * 2);
            yield return Strokes.Text($"own limit {Figure(limit)}", Weight.Bold, left + 1, Y(limit) - 1, TypeMm, Ink.SignalRed);
        }

        for (int i = 0; i < Lines.Count; i++)
        {
            if (Path(Lines[i].Points, X, Y) is { Length: > 0 } path)
            {
                yield return new PathItem(path, 0, 0, 1, null, Ink.Black, LineMm);
            }

            foreach ((double at, double? value) in Lines[i].Points)
            {
                if (value is { } seen)
                {
                    yield return MarkAt(i, X(at), Y(seen));
                }
            }
        }
    }

    // From each point to the next one, where both were measured.
    private static string Path(IReadOnlyList<(double At, double? Value)> points, Func<double, double> x, Func<double, double> y)
    {
        var path = new StringBuilder();
        foreach (((double from, double? first), (double to, double? second)) in points.Zip(points.Skip(1)))
        {
            if (first is { } one && second is { } two)
            {
                path.Append(FormattableString.Invariant($"M{x(from):0.###} {y(one):0.###} L{x(to):0.###} {y(two):0.###} "));
            }
        }

        return path.ToString().TrimEnd();
    }

    private static string Figure(double value) => Figures.Rounded(value, 1);
}

using System.Globalization;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Reads the outline of a vessel, a corner a line.</summary>
internal static class OutlineReader
{
    private const int FewestCorners = 3;
    private const int MostCorners = 200;

    // Of the box around it: in less nothing can stand.
    private const double ThinnestShare = 0.01;

    /// <summary>The section; null when none is declared, or with problems when it is none.</summary>
    public static OutlineSection? Read(Fields size)
    {
        if (!size.Has(VesselShape.Outline))
        {
            return null;
        }

        List<(Millimetres X, Millimetres Y)?> read = [.. size.Texts(VesselShape.Outline).Select(t => Corner(size, t))];
        List<(Millimetres X, Millimetres Y)> corners = [.. read.OfType<(Millimetres, Millimetres)>()];
        if (corners.Count < read.Count)
        {
            return null;
        }

        if (corners.Count is < FewestCorners or > MostCorners)
        {
            Refuse(size, "An outline has three corners at least, and 200 at most.");
            return null;
        }

        var section = new OutlineSection(corners);
        if (section.AreaSquareMillimetres <= ThinnestShare * Box(corners) || CrossesItself(corners))
        {
            Refuse(size, "The outline encloses nothing or crosses itself.");
            return null;
        }

        return section;
    }

    private static void Refuse(Fields size, string what) =>
        size.Problems.Add(
            size.PlaceOf(VesselShape.Outline),
            what,
            "List its corners in millimetres, one after the other around it: 'outlineMm: [0 0, 120 0, 60 100]'."
        );

    private static (Millimetres, Millimetres)? Corner(Fields size, string text)
    {
        string[] parts = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (parts is [var x, var y] && Number(x) is { } right && Number(y) is { } up)
        {
            return (new Millimetres(right), new Millimetres(up));
        }

        Refuse(size, $"'{text}' is no corner.");
        return null;
    }

    private static double? Number(string text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value)
        && value <= VesselShape.LongestMm
            ? value
            : null;

    private static double Box(List<(Millimetres X, Millimetres Y)> corners) =>
        (corners.Max(c => c.X.Value) - corners.Min(c => c.X.Value)) * (corners.Max(c => c.Y.Value) - corners.Min(c => c.Y.Value));

    private static bool CrossesItself(List<(Millimetres X, Millimetres Y)> corners)
    {
        int n = corners.Count;
        return Enumerable
            .Range(0, n)
            .Any(i =>
                Enumerable.Range(i + 2, Math.Max(0, n - i - 2)).Any(j => (j + 1) % n != i && Cross(At(i), At(i + 1), At(j), At(j + 1)))
            );

        (double X, double Y) At(int i) => (corners[i % n].X.Value, corners[i % n].Y.Value);
    }

    private static bool Cross((double X, double Y) a, (double X, double Y) b, (double X, double Y) c, (double X, double Y) d) =>
        Math.Sign(Turn(a, b, c)) != Math.Sign(Turn(a, b, d)) && Math.Sign(Turn(c, d, a)) != Math.Sign(Turn(c, d, b));

    private static double Turn((double X, double Y) a, (double X, double Y) b, (double X, double Y) c) =>
        ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X));
}

using System.Globalization;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;
using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Reads the outline of a vessel or a label, a corner a line.</summary>
internal static class OutlineReader
{
    private const int FewestCorners = 3;
    private const int MostCorners = 200;

    // Of the box around it: in less nothing can stand.
    private const double ThinnestShare = 0.01;

    /// <summary>The section; null when none is declared, or with problems when it is none.</summary>
    public static OutlineSection? Read(Fields size) =>
        Corners(size, VesselShape.Outline) is { } corners
            ? new OutlineSection([.. corners.Select(c => (new Millimetres(c.X), new Millimetres(c.Y)))])
            : null;

    /// <summary>The cut line of a label; null when none is declared, or with problems when it is none.</summary>
    public static LabelOutline? ReadCutLine(Fields label)
    {
        if (Corners(label, LabelShape.Outline) is not { } corners)
        {
            return null;
        }

        double left = corners.Min(c => c.X);
        double top = corners.Max(c => c.Y);
        List<(double X, double Y)> ring = [.. corners.Select(c => (c.X - left, top - c.Y))];
        return new LabelOutline(
            [ring],
            string.Join(' ', ring.Select((c, i) => FormattableString.Invariant($"{(i == 0 ? 'M' : 'L')}{c.X:0.###} {c.Y:0.###}"))) + " Z"
        );
    }

    private static List<(double X, double Y)>? Corners(Fields size, TextsField field)
    {
        if (!size.Has(field))
        {
            return null;
        }

        List<(double X, double Y)?> read = [.. size.Texts(field).Select(t => Corner(size, field, t))];
        List<(double X, double Y)> corners = [.. read.OfType<(double, double)>()];
        if (corners.Count < read.Count)
        {
            return null;
        }

        if (corners.Count is < FewestCorners or > MostCorners)
        {
            Refuse(size, field, "An outline has three corners at least, and 200 at most.");
            return null;
        }

        if (Rings.Area(corners) <= ThinnestShare * Box(corners) || Rings.Cross([corners]))
        {
            Refuse(size, field, "The outline encloses nothing or crosses itself.");
            return null;
        }

        return corners;
    }

    private static void Refuse(Fields size, TextsField field, string what) =>
        size.Problems.Add(
            size.PlaceOf(field),
            what,
            "List its corners in millimetres, one after the other around it: 'outlineMm: [0 0, 120 0, 60 100]'."
        );

    private static (double, double)? Corner(Fields size, TextsField field, string text)
    {
        string[] parts = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (parts is [var x, var y] && Number(x) is { } right && Number(y) is { } up)
        {
            return (right, up);
        }

        Refuse(size, field, $"'{text}' is no corner.");
        return null;
    }

    private static double? Number(string text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value)
        && value <= VesselShape.LongestMm
            ? value
            : null;

    private static double Box(List<(double X, double Y)> corners) =>
        (corners.Max(c => c.X) - corners.Min(c => c.X)) * (corners.Max(c => c.Y) - corners.Min(c => c.Y));
}

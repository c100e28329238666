using Chandlery.Core.Declared;
using Chandlery.Paper.Layout;

namespace Chandlery.Paper.Shapes;

/// <summary>The outline of a label: its size, where text may stand, and whether it holds what the law asks for.</summary>
/// <param name="Request">Shape and size.</param>
/// <param name="Where">Where it goes on the vessel, in words.</param>
public sealed record LabelShape(LabelRequest Request, string Where)
{
    /// <summary>Width of the smallest rectangle around it, millimetres.</summary>
    public double WidthMm => Request.Size.Width.Value;

    /// <summary>Height of the smallest rectangle around it, millimetres.</summary>
    public double HeightMm => Request.Size.Height.Value;

    /// <summary>Its area, square millimetres; of a leaflet one side.</summary>
    public double AreaMm2 => IsRound ? Math.PI / 4 * ((WidthMm * WidthMm) - (Request.Hole.Value * Request.Hole.Value)) : WidthMm * HeightMm;

    /// <summary>True when lines may stand in columns: nothing but its four edges bounds them.</summary>
    public bool IsRectangular => !IsRound;

    private bool IsRound => Request.Form is LabelForm.Circle or LabelForm.Ring;

    /// <summary>
    /// True when the law's size fits inside. The law gives two sides; a circle must hold that rectangle whole, which is
    /// the stricter reading.
    /// </summary>
    public bool Holds(LabelSize size)
    {
        double shorter = Math.Min(size.Width.Value, size.Height.Value);
        double longer = Math.Max(size.Width.Value, size.Height.Value);
        return IsRound
            ? Math.Sqrt((shorter * shorter) + (longer * longer)) <= WidthMm && Request.Hole.Value == 0
            : Math.Min(WidthMm, HeightMm) >= shorter && Math.Max(WidthMm, HeightMm) >= longer;
    }

    /// <summary>SVG path of the outline, millimetres; empty for a plain rectangle, whose outline is the page.</summary>
    public string Outline()
    {
        double r = WidthMm / 2;
        double c = Request.Corner.Value;
        return Request.Form switch
        {
            LabelForm.Circle => Circle(r, r),
            LabelForm.Ring => Circle(r, r) + " " + Circle(r, Request.Hole.Value / 2),
            LabelForm.Rectangle when c > 0 => FormattableString.Invariant(
                $"M{c:0.###} 0 H{WidthMm - c:0.###} A{c:0.###} {c:0.###} 0 0 1 {WidthMm:0.###} {c:0.###} V{HeightMm - c:0.###} A{c:0.###} {c:0.###} 0 0 1 {WidthMm - c:0.###} {HeightMm:0.###} H{c:0.###} A{c:0.###} {c:0.###} 0 0 1 0 {HeightMm - c:0.###} V{c:0.###} A{c:0.###} {c:0.###} 0 0 1 {c:0.###} 0 Z"
            ),
            _ => "",
        };
    }

    /// <summary>Where text may stand, a margin inside the outline.</summary>
    /// <param name="marginMm">Margin.</param>
    /// <param name="endless">True to measure how much height a text would need.</param>
    internal Region Room(double marginMm, bool endless = false)
    {
        double bottom = endless ? double.PositiveInfinity : HeightMm - marginMm;
        if (IsRound && !endless)
        {
            return new Region(marginMm, bottom, (from, to) => Chord(from, to, marginMm)) { IsRound = true };
        }

        return new Region(marginMm, bottom, (from, to) => RoundedRow(from, to, marginMm));
    }

    private IReadOnlyList<(double Left, double Right)> Chord(double from, double to, double margin)
    {
        double centre = WidthMm / 2;
        double half = HalfChord(centre - margin, Math.Max(Math.Abs(from - centre), Math.Abs(to - centre)));
        if (half <= 0)
        {
            return [];
        }

        // The hole takes out the most where the line comes nearest to its middle.
        double nearest = from <= centre && to >= centre ? 0 : Math.Min(Math.Abs(from - centre), Math.Abs(to - centre));
        double hole = Request.Hole.Value > 0 ? HalfChord((Request.Hole.Value / 2) + margin, nearest) : 0;
        return hole > 0 ? [(centre - half, centre - hole), (centre + hole, centre + half)] : [(centre - half, centre + half)];
    }

    private IReadOnlyList<(double Left, double Right)> RoundedRow(double from, double to, double margin)
    {
        double corner = Math.Max(0, Request.Corner.Value - margin);
        double into = Math.Max(Math.Max(margin + corner - from, to - (HeightMm - margin - corner)), 0);
        double inset = into <= 0 || corner == 0 ? 0 : corner - HalfChord(corner, Math.Min(into, corner));
        return [(margin + inset, WidthMm - margin - inset)];
    }

    private static double HalfChord(double radius, double distance) =>
        distance >= radius ? 0 : Math.Sqrt((radius * radius) - (distance * distance));

    private static string Circle(double centre, double radius) =>
        FormattableString.Invariant(
            $"M{centre - radius:0.###} {centre:0.###} A{radius:0.###} {radius:0.###} 0 1 0 {centre + radius:0.###} {centre:0.###} A{radius:0.###} {radius:0.###} 0 1 0 {centre - radius:0.###} {centre:0.###} Z"
        );
}

using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;
using Chandlery.Paper.Layout;
using Chandlery.Paper.Pdf;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Shapes;

/// <summary>The outline of a label: its size, where text may stand, and whether it holds what the law asks for.</summary>
/// <param name="Request">Shape and size.</param>
/// <param name="Where">Where it goes on the vessel, in words.</param>
public sealed record LabelShape(LabelRequest Request, string Where)
{
    // How far the arc of a quarter circle stays inside the corner of the square around it, in radii.
    private const double CornerClearance = 0.29289;
    private const double LeastFromArcMm = 1;

    private readonly CutLine? cutLine = CutLine.Of(Request);

    /// <summary>Where a label is hidden when the package stands as usual.</summary>
    public const string OnTheBase = "on the base";

    /// <summary>Width of the smallest rectangle around it, millimetres.</summary>
    public double WidthMm => Request.Size.Width.Value;

    /// <summary>Height of the smallest rectangle around it, millimetres.</summary>
    public double HeightMm => Request.Size.Height.Value;

    /// <summary>Its area, square millimetres; of a leaflet one side.</summary>
    public double AreaMm2 =>
        cutLine?.AreaMm2
        ?? (IsRound ? Math.PI / 4 * ((WidthMm * WidthMm) - (Request.Hole.Value * Request.Hole.Value)) : WidthMm * HeightMm);

    /// <summary>True when lines may stand in columns: nothing but its four edges bounds them.</summary>
    public bool IsRectangular => !IsRound && cutLine is null;

    private bool IsRound => Request.Form is LabelForm.Circle or LabelForm.Ring;

    /// <summary>
    /// True when the law's size fits inside. The law gives two sides (CLP Annex I, 1.2.1.4); a circle, an arch and an outline must
    /// hold that rectangle whole, upright or on its side, and clear of holes. An equal area, or an equal rectangle around the label,
    /// would be the laxer readings.
    /// </summary>
    public bool Holds(LabelSize size)
    {
        double shorter = Math.Min(size.Width.Value, size.Height.Value);
        double longer = Math.Max(size.Width.Value, size.Height.Value);
        return cutLine is not null ? cutLine.Holds(shorter, longer)
            : IsRound ? Math.Sqrt((shorter * shorter) + (longer * longer)) <= WidthMm && Request.Hole.Value == 0
            : Math.Min(WidthMm, HeightMm) >= shorter && Math.Max(WidthMm, HeightMm) >= longer;
    }

    /// <summary>SVG path of the outline, millimetres; empty for a plain rectangle, whose outline is the page.</summary>
    public string Outline()
    {
        if (cutLine is not null)
        {
            return cutLine.Path;
        }

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

    /// <summary>
    /// How far text stays from the edges of a rectangle. Rounded corners are cleared by the same inset on every line, so that no line
    /// stands further in than its neighbours.
    /// </summary>
    /// <param name="marginMm">Margin that is wanted anyway.</param>
    internal double InsetMm(double marginMm) =>
        Request.Corner.Value > 0 ? Math.Max(marginMm, (Request.Corner.Value * CornerClearance) + LeastFromArcMm) : marginMm;

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

        if (cutLine is not null && !endless)
        {
            return new Region(marginMm, bottom, (from, to) => cutLine.Widest(from, to, marginMm)) { IsRound = true };
        }

        double inset = InsetMm(marginMm);
        return Region.Rectangle(inset, inset, WidthMm - inset, endless ? double.PositiveInfinity : HeightMm - inset);
    }

    /// <summary>The part of an arch or outline between two heights, as a label of its own; null where there is nothing.</summary>
    internal LabelShape? Between(double topMm, double bottomMm)
    {
        if (cutLine?.Between(topMm, bottomMm) is not { } part)
        {
            return null;
        }

        // A part with four straight edges is a rectangle, where lines may stand in columns.
        double height = bottomMm - topMm;
        bool isWhole = Math.Abs(CutLine.AreaOf(part) - (WidthMm * height)) < 1e-6;
        return isWhole
            ? Arrangements.Rectangle(new LabelSize(Request.Size.Width, new Millimetres(height)), Where)
            : new LabelShape(
                Request with
                {
                    Form = LabelForm.Outline,
                    Outline = part,
                    Size = new LabelSize(Request.Size.Width, new Millimetres(height)),
                },
                Where
            );
    }

    /// <summary>True when a text lies inside an arch or outline and keeps a distance from its edge everywhere.</summary>
    internal bool Clears(TextItem text, double distanceMm) =>
        cutLine is not null
        && ItemBounds.Of([text]) is { } box
        && cutLine.Holds(box.LeftMm, box.TopMm, box.RightMm, box.BottomMm, distanceMm);

    /// <summary>About the largest box inside an arch or outline; all of it for other shapes.</summary>
    internal (double X, double Y, double Width, double Height) LargestBox() => cutLine?.LargestBox() ?? (0, 0, WidthMm, HeightMm);

    private IReadOnlyList<(double Left, double Right)> Chord(double from, double to, double margin)
    {
        double centre = WidthMm / 2;
        double half = HalfChord(centre - margin, Math.Max(Math.Abs(from - centre), Math.Abs(to - centre)));
        if (half <= 0)
        {
            return [];
        }

        // Nothing reads on across a hole: lines stand above and below it.
        double nearest = from <= centre && to >= centre ? 0 : Math.Min(Math.Abs(from - centre), Math.Abs(to - centre));
        bool meetsHole = Request.Hole.Value > 0 && HalfChord((Request.Hole.Value / 2) + margin, nearest) > 0;
        return meetsHole ? [] : [(centre - half, centre + half)];
    }

    private static double HalfChord(double radius, double distance) =>
        distance >= radius ? 0 : Math.Sqrt((radius * radius) - (distance * distance));

    private static string Circle(double centre, double radius) =>
        FormattableString.Invariant(
            $"M{centre - radius:0.###} {centre:0.###} A{radius:0.###} {radius:0.###} 0 1 0 {centre + radius:0.###} {centre:0.###} A{radius:0.###} {radius:0.###} 0 1 0 {centre - radius:0.###} {centre:0.###} Z"
        );
}

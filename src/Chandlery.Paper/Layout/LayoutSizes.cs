using Chandlery.Paper.Fonts;

namespace Chandlery.Paper.Layout;

/// <summary>Sizes that a layout works with.</summary>
/// <param name="XHeightMm">Height of a lower-case x of the base size.</param>
/// <param name="LineSpacing">Distance of lines as a multiple of the type size.</param>
/// <param name="PictogramMm">Side of a hazard pictogram's square, which stands on a point.</param>
internal sealed record LayoutSizes(double XHeightMm, double LineSpacing, double PictogramMm)
{
    /// <summary>What each gap gets on top of its own height where there is room to spare, millimetres.</summary>
    public double SpareGapMm { get; init; }

    /// <summary>What rows of signs and the lines between them get on top of their own distance where a page is to be filled, millimetres.</summary>
    public double SpareRowMm { get; init; }

    /// <summary>How far headings and lines that stand out begin left of the text, millimetres.</summary>
    public double InsetMm { get; init; }

    /// <summary>Base type size.</summary>
    public double TypeSizeMm => XHeightMm / Face.Of(Weight.Regular).XHeight;
}

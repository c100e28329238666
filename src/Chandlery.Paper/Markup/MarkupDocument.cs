using Chandlery.Paper.Blocks;

namespace Chandlery.Paper.Markup;

/// <summary>A document as its template wrote it.</summary>
/// <param name="Title">Title for the PDF.</param>
/// <param name="Language">Language code for the PDF.</param>
/// <param name="WidthMm">Page width; 0 when the caller decides.</param>
/// <param name="HeightMm">Page height; 0 when the caller decides.</param>
/// <param name="MarginMm">Margin.</param>
/// <param name="XHeightMm">Largest height of a lower-case x; the text is made smaller until it fits.</param>
/// <param name="SmallestXHeightMm">Smallest height of a lower-case x; 0 when the caller decides.</param>
/// <param name="Blocks">Its parts.</param>
public sealed record MarkupDocument(
    string Title,
    string Language,
    double WidthMm,
    double HeightMm,
    double MarginMm,
    double XHeightMm,
    double SmallestXHeightMm,
    IReadOnlyList<Block> Blocks
)
{
    /// <summary>How far the text begins right of the margin, where headings begin; 0 where both begin at the margin.</summary>
    public double InsetMm { get; init; }
}

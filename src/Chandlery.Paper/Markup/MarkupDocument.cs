using Chandlery.Paper.Blocks;

namespace Chandlery.Paper.Markup;

/// <summary>A document as its template wrote it.</summary>
public sealed record MarkupDocument
{
    /// <summary>Title for the PDF.</summary>
    public required string Title { get; init; }

    /// <summary>Language code for the PDF.</summary>
    public required string Language { get; init; }

    /// <summary>Page width; 0 when the caller decides.</summary>
    public required double WidthMm { get; init; }

    /// <summary>Page height; 0 when the caller decides.</summary>
    public required double HeightMm { get; init; }

    /// <summary>Margin.</summary>
    public required double MarginMm { get; init; }

    /// <summary>Largest height of a lower-case x; the text is made smaller until it fits.</summary>
    public required double XHeightMm { get; init; }

    /// <summary>Smallest height of a lower-case x; 0 when the caller decides.</summary>
    public required double SmallestXHeightMm { get; init; }

    /// <summary>Its parts.</summary>
    public required IReadOnlyList<Block> Blocks { get; init; }

    /// <summary>How far the text begins right of the margin, where headings begin; 0 where both begin at the margin.</summary>
    public double InsetMm { get; init; }
}

namespace Chandlery.Paper.Markup;

/// <summary>A paragraph.</summary>
/// <param name="Spans">Its text.</param>
/// <param name="Size">Type size as a multiple of the document's base size.</param>
/// <param name="FigureMm">Least height of its figures in millimetres; 0 when the base size decides.</param>
/// <param name="Align">Alignment.</param>
public sealed record Paragraph(IReadOnlyList<Span> Spans, double Size, double FigureMm, Align Align) : Block;

using Chandlery.Paper.Fonts;

namespace Chandlery.Paper.Markup;

/// <summary>How lines stand between the edges.</summary>
public enum Align
{
    /// <summary>At the left edge.</summary>
    Left,

    /// <summary>In the middle.</summary>
    Centre,

    /// <summary>At the right edge.</summary>
    Right,
}

/// <summary>A piece of a paragraph in one weight.</summary>
/// <param name="Text">The text.</param>
/// <param name="Weight">Its weight.</param>
public sealed record Span(string Text, Weight Weight);

/// <summary>A part of a document, stacked from top to bottom.</summary>
public abstract record Block;

/// <summary>A paragraph.</summary>
/// <param name="Spans">Its text.</param>
/// <param name="Size">Type size as a multiple of the document's base size.</param>
/// <param name="FigureMm">Least height of its figures in millimetres; 0 when the base size decides.</param>
/// <param name="Align">Alignment.</param>
public sealed record Paragraph(IReadOnlyList<Span> Spans, double Size, double FigureMm, Align Align) : Block;

/// <summary>The hazard pictograms; text flows beside them.</summary>
/// <param name="Codes">GHS codes.</param>
public sealed record Pictograms(IReadOnlyList<string> Codes) : Block;

/// <summary>A row of burn-safety symbols.</summary>
/// <param name="Symbols">Names, each with a caption (empty for none).</param>
/// <param name="SideMm">Side of a symbol.</param>
public sealed record SymbolRow(IReadOnlyList<(string Name, string Caption)> Symbols, double SideMm) : Block;

/// <summary>Messages beside their symbols, in columns.</summary>
/// <param name="Items">Symbol (empty for a plain line) and text.</param>
/// <param name="Columns">Number of columns.</param>
/// <param name="SideMm">Side of a symbol.</param>
public sealed record Messages(IReadOnlyList<(string Symbol, string Text)> Items, int Columns, double SideMm) : Block;

/// <summary>QR code and bar code, side by side.</summary>
/// <param name="QrText">What the QR code holds; empty for none.</param>
/// <param name="Gtin">GTIN-13 of the bar code; empty for none.</param>
public sealed record Codes(string QrText, string Gtin) : Block;

/// <summary>Empty room.</summary>
/// <param name="Size">Height as a multiple of the base type size.</param>
public sealed record Gap(double Size) : Block;

/// <summary>A thin line from edge to edge.</summary>
public sealed record Rule : Block;

/// <summary>A row of a table.</summary>
/// <param name="Cells">Text of each cell.</param>
/// <param name="IsHeading">Set in bold and repeated on every page.</param>
public sealed record TableRow(IReadOnlyList<IReadOnlyList<Span>> Cells, bool IsHeading);

/// <summary>A table with a thin line under each row.</summary>
/// <param name="Widths">Width of each column as a share of the whole; they add up to 1.</param>
/// <param name="Rows">Rows.</param>
public sealed record Table(IReadOnlyList<double> Widths, IReadOnlyList<TableRow> Rows) : Block;

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
);

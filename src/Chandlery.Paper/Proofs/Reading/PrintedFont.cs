using System.Text;
using Chandlery.Paper.Fonts;

namespace Chandlery.Paper.Proofs.Reading;

/// <summary>A font that a PDF has inside: what its codes mean, how wide and how high they are (ISO 32000-1, 9.7 to 9.10).</summary>
internal sealed class PrintedFont
{
    private readonly Dictionary<int, string> meanings;
    private readonly List<object> widths;
    private readonly double otherWidth;
    private readonly byte[] glyphOfCode;
    private readonly FontTables tables;
    private readonly Dictionary<int, (double Left, double Low, double Right, double High)?> outlines = [];

    /// <summary>Reads a font: composite, its codes two bytes, with TrueType outlines.</summary>
    /// <exception cref="FormatException">It is another kind.</exception>
    public PrintedFont(PdfObjects objects, Dictionary<string, object> font)
    {
        if (
            objects.OrNull<PdfName>(font, "Encoding") is not { Text: "Identity-H" }
            || objects.Of<List<object>>(font, "DescendantFonts") is not [var only]
            || objects.Resolved(only) is not Dictionary<string, object> descendant
            || objects.Of<List<object>>(descendant, "W") is not [1.0, List<object> listed]
        )
        {
            throw new FormatException("a font is built otherwise than is read here");
        }

        Dictionary<string, object> descriptor = objects.Of<Dictionary<string, object>>(descendant, "FontDescriptor");
        tables = FontTables.Read(objects.Stream(descriptor, "FontFile2")) ?? throw new FormatException("a font inside is no font");
        glyphOfCode = objects.OrNull<PdfName>(descendant, "CIDToGIDMap") is { Text: "Identity" }
            ? []
            : objects.Stream(descendant, "CIDToGIDMap");
        widths = listed;
        otherWidth = objects.Of<double>(descendant, "DW");
        meanings = Meanings(objects.Stream(font, "ToUnicode"));
    }

    /// <summary>What a code means; nothing where the font does not tell.</summary>
    public string MeaningOf(int code) => meanings.GetValueOrDefault(code, "");

    /// <summary>How far a code takes the pen, thousandths of the type size.</summary>
    public double WidthOf(int code) => code >= 1 && code <= widths.Count && widths[code - 1] is double width ? width : otherWidth;

    /// <summary>Left, lower, right and upper end of a code's outline as shares of the type size; null for a blank.</summary>
    public (double Left, double Low, double Right, double High)? OutlineOf(int code)
    {
        if (!outlines.TryGetValue(code, out var outline))
        {
            outline = Read(code);
            outlines[code] = outline;
        }

        return outline;
    }

    private (double Left, double Low, double Right, double High)? Read(int code)
    {
        int glyph = glyphOfCode.Length == 0 ? code : (glyphOfCode[2 * code] << 8) | glyphOfCode[(2 * code) + 1];
        int start = PlaceOf(glyph);
        return PlaceOf(glyph + 1) == start ? null : (Share(start + 2), Share(start + 4), Share(start + 6), Share(start + 8));
    }

    private double Share(int place) => tables.Signed("glyf", place) / (double)tables.Unsigned("head", 18);

    // Where a glyph's outline begins (OpenType specification 1.9.1, loca).
    private int PlaceOf(int glyph) =>
        tables.Signed("head", 50) == 0
            ? 2 * tables.Unsigned("loca", 2 * glyph)
            : (tables.Unsigned("loca", 4 * glyph) << 16) | tables.Unsigned("loca", (4 * glyph) + 2);

    private static Dictionary<int, string> Meanings(byte[] map)
    {
        var meanings = new Dictionary<int, string>();
        var scanner = new PdfScanner(map);
        bool inRows = false;
        for (object? next = scanner.Next(); next is not null; next = scanner.Next())
        {
            switch (next)
            {
                case PdfWord { Text: "beginbfrange" }:
                    throw new FormatException("a font tells its meanings otherwise than is read here");
                case PdfWord word:
                    inRows = word.Text == "beginbfchar" || (inRows && word.Text != "endbfchar");
                    break;
                case byte[] and [var high, var low] when inRows:
                    meanings[(high << 8) | low] = Encoding.BigEndianUnicode.GetString(scanner.Next<byte[]>());
                    break;
            }
        }

        return meanings;
    }
}

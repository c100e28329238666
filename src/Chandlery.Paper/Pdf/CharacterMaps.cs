using System.Globalization;
using System.Text;

namespace Chandlery.Paper.Pdf;

/// <summary>The maps of a font's codes (ISO 32000-1, 9.7.5 and 9.10.3).</summary>
internal static class CharacterMaps
{
    // A block of a map holds a hundred rows at most.
    private const int RowsInBlock = 100;

    /// <summary>What codes mean, for those who search or copy.</summary>
    public static byte[] ToUnicode(IReadOnlyList<FontCode> codes) =>
        Map("Adobe-Identity-UCS", "/Registry(Adobe)/Ordering(UCS)/Supplement 0", "bfchar", codes, c => $"<{PdfText.Hex(c.Meaning)}>");

    /// <summary>Which glyph each code draws, where several codes draw one.</summary>
    public static byte[] ToGlyphs(IReadOnlyList<FontCode> codes) =>
        Map(
            "Chandlery-Identity",
            "/Registry(Adobe)/Ordering(Identity)/Supplement 0",
            "cidchar",
            codes,
            c => c.Number.ToString(CultureInfo.InvariantCulture)
        );

    /// <summary>The same as numbers of two bytes, from code 0 (ISO 32000-1, table 117).</summary>
    public static byte[] GlyphNumbers(IReadOnlyList<FontCode> codes) =>
        [0, 0, .. codes.SelectMany(c => new[] { (byte)(c.Number >> 8), (byte)c.Number })];

    private static byte[] Map(string name, string system, string rows, IReadOnlyList<FontCode> codes, Func<FontCode, string> value)
    {
        var map = new StringBuilder();
        map.Append("/CIDInit/ProcSet findresource begin\n12 dict begin\nbegincmap\n");
        map.Append(CultureInfo.InvariantCulture, $"/CIDSystemInfo<<{system}>>def\n/CMapName/{name} def\n");
        map.Append(rows == "bfchar" ? "/CMapType 2 def\n" : "/CMapType 1 def\n/WMode 0 def\n");
        map.Append("1 begincodespacerange\n<0000><FFFF>\nendcodespacerange\n");
        foreach (FontCode[] block in codes.Chunk(RowsInBlock))
        {
            map.Append(CultureInfo.InvariantCulture, $"{block.Length} begin{rows}\n");
            foreach (FontCode code in block)
            {
                map.Append(CultureInfo.InvariantCulture, $"<{code.Code:X4}> {value(code)}\n");
            }

            map.Append(CultureInfo.InvariantCulture, $"end{rows}\n");
        }

        map.Append("endcmap\nCMapName currentdict/CMap defineresource pop\nend\nend\n");
        return Encoding.ASCII.GetBytes(map.ToString());
    }
}

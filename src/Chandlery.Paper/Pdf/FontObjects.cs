using System.IO.Hashing;
using System.Runtime.InteropServices;
using System.Text;
using Chandlery.Paper.Fonts;

namespace Chandlery.Paper.Pdf;

/// <summary>Writes the fonts of a document (ISO 32000-1, 9.7 to 9.9): composite fonts with the glyphs in use.</summary>
internal static class FontObjects
{
    // Its own characters are in no standard order (table 123).
    private const int Symbolic = 4;

    /// <summary>Writes a font under a number that was reserved.</summary>
    public static void Write(PdfFile file, int number, FontUse use)
    {
        byte[] subset = use.Face.Subset(use.Glyphs);
        if (FontTables.Read(use.Face.Data) is not { } full || FontTables.Read(subset) is not { } small)
        {
            throw new InvalidOperationException("a face is no font file");
        }

        string name = PdfText.Name($"{SubsetTag(use)}+{FontNames.PostScript(full)}");
        bool isCompact = small.Has("CFF ");
        int program = isCompact
            ? file.AddPacking("/Subtype/CIDFontType0C", small.Of("CFF "))
            : file.AddPacking($"/Length1 {subset.Length}", subset);
        int meanings = file.AddPacking("", CharacterMaps.ToUnicode(use.Codes));

        // Compact outlines are always numbered by glyph, so where codes are not, the encoding must say so. Other outlines have a map
        // of their own for it, which more readers follow when they look up a code's meaning.
        string encoding = use.IsPlain || !isCompact ? "/Identity-H" : $" {GlyphEncoding(file, use)} 0 R";
        string kind = isCompact ? "CIDFontType0" : $"CIDFontType2/CIDToGIDMap{GlyphMap(file, use)}";
        int descriptor = file.Add(Descriptor(full, name, isCompact ? "/FontFile3" : "/FontFile2", program));
        int descendant = file.Add(
            new ByteText()
                .Put($"<</Type/Font/Subtype/{kind}/BaseFont{name}")
                .Put($"/CIDSystemInfo<</Registry(Adobe)/Ordering(Identity)/Supplement 0>>/FontDescriptor {descriptor} 0 R")
                .Put("/DW ")
                .Put(use.Width(0), 1)
                .Put(Widths(use, isCompact).Written)
                .Put(">>")
        );
        file.Add(
            number,
            new ByteText().Put(
                $"<</Type/Font/Subtype/Type0/BaseFont{name}/Encoding{encoding}/DescendantFonts[{descendant} 0 R]/ToUnicode {meanings} 0 R>>"
            )
        );
    }

    private static string GlyphMap(PdfFile file, FontUse use) =>
        use.IsPlain ? "/Identity" : $" {file.AddPacking("", CharacterMaps.GlyphNumbers(use.Codes))} 0 R";

    private static int GlyphEncoding(PdfFile file, FontUse use) =>
        file.AddPacking(
            "/Type/CMap/CMapName/Chandlery-Identity/WMode 0/CIDSystemInfo<</Registry(Adobe)/Ordering(Identity)/Supplement 0>>",
            CharacterMaps.ToGlyphs(use.Codes)
        );

    // By glyph for compact outlines, else by code.
    private static ByteText Widths(FontUse use, bool byGlyph)
    {
        var widths = new ByteText().Put("/W[1[");
        foreach (ushort glyph in byGlyph ? use.Glyphs : use.Codes.Select(c => c.Glyph))
        {
            widths.Spaced(use.Width(glyph), 1);
        }

        return widths.Put("]]");
    }

    private static ByteText Descriptor(FontTables font, string name, string entry, int program)
    {
        double scale = 1000.0 / font.Unsigned("head", 18);
        int capitals = font.Signed("OS/2", 88);
        ByteText descriptor = new ByteText().Put($"<</Type/FontDescriptor/FontName{name}/Flags {Symbolic}/FontBBox[");
        foreach (int at in new[] { 36, 38, 40, 42 })
        {
            descriptor.Spaced(font.Signed("head", at) * scale, 0);
        }

        return descriptor
            .Put("]/ItalicAngle ")
            .Put(font.Signed("post", 4))
            .Put("/Ascent ")
            .Put(font.Signed("hhea", 4) * scale, 0)
            .Put("/Descent ")
            .Put(font.Signed("hhea", 6) * scale, 0)
            .Put("/CapHeight ")
            .Put((capitals > 0 ? capitals : font.Signed("hhea", 4)) * scale, 0)
            .Put("/StemV ")
            .Put(StemOf(font.Unsigned("OS/2", 4)))
            .Put($"{entry} {program} 0 R>>");
    }

    // Files do not tell the stem's width; common practice, no source: it grows with the weight's square.
    private static int StemOf(int weight) => 50 + (weight * weight / 4225);

    // Six capitals that differ where the glyphs do (9.6.4).
    private static string SubsetTag(FontUse use)
    {
        ulong hash = XxHash64.HashToUInt64(MemoryMarshal.AsBytes<ushort>(use.Glyphs.ToArray()));
        var tag = new StringBuilder();
        for (int i = 0; i < 6; i++)
        {
            tag.Append((char)('A' + (hash % 26)));
            hash /= 26;
        }

        return tag.ToString();
    }
}

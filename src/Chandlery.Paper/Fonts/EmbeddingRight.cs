namespace Chandlery.Paper.Fonts;

/// <summary>Whether a font file may and can be embedded, cut down to the glyphs in use.</summary>
public static class EmbeddingRight
{
    // OS/2 table, fsType (OpenType specification 1.9.1).
    private const int RightsAt = 8;
    private const int Restricted = 1 << 1;
    private const int Preview = 1 << 2;
    private const int Editable = 1 << 3;
    private const int NoSubset = 1 << 8;
    private const int BitmapsOnly = 1 << 9;

    private static readonly string[] Needed = ["head", "hhea", "hmtx", "maxp", "cmap"];

    /// <summary>Why it may not be embedded, as a sentence for its user; null when it may.</summary>
    public static string? Refusal(byte[] font)
    {
        if (FontTables.Read(font) is not { } tables)
        {
            return "This is no TrueType or OpenType file with one face: name a .ttf or .otf file (no web font, no collection).";
        }

        string[] missing = [.. Needed.Where(t => !tables.Has(t))];
        if (missing.Length > 0)
        {
            return $"The font file lacks what every font needs ({string.Join(", ", missing)}): it is damaged.";
        }

        return (HasOutlines(tables), tables.Has("OS/2")) switch
        {
            (false, _) => "The font file holds no outlines that a PDF can take (TrueType or CFF, not keyed by character collection).",
            (_, false) => "The font file does not say whether it may be embedded (no OS/2 table): ask its maker for one that does.",
            _ => Refusal(tables.Unsigned("OS/2", RightsAt)),
        };
    }

    // Of several rights the least restrictive counts, in fonts of old versions of the table.
    private static string? Refusal(int rights) =>
        (rights & Restricted) != 0 && (rights & (Preview | Editable)) == 0
            ? "The font's maker forbids embedding (fsType, bit 1): choose a face whose licence allows it."
        : (rights & NoSubset) != 0
            ? "The font's maker forbids embedding a part of it (fsType, bit 8), and only the letters in use are embedded: choose another face."
        : (rights & BitmapsOnly) != 0
            ? "The font's maker allows only its bitmaps to be embedded (fsType, bit 9), which no press can use: choose another face."
        : null;

    private static bool HasOutlines(FontTables tables) =>
        (tables.Has("glyf") && tables.Has("loca")) || (tables.Has("CFF ") && !IsKeyedByCollection(tables.Of("CFF ")));

    // Such a font's top dictionary begins with the operator ROS, 12 30, behind its three operands (Adobe technical note 5176, 4, 5, 9).
    private static bool IsKeyedByCollection(ReadOnlySpan<byte> cff)
    {
        ReadOnlySpan<byte> dictionary = FirstOfIndex(AfterIndex(cff[Math.Min(cff.Length, cff.Length > 2 ? cff[2] : 0)..]));
        int at = 0;
        while (at < dictionary.Length && dictionary[at] >= 28)
        {
            at += dictionary[at] switch
            {
                28 => 3,
                29 => 5,
                >= 247 and <= 254 => 2,
                _ => 1,
            };
        }

        return at + 1 < dictionary.Length && dictionary[at] == 12 && dictionary[at + 1] == 30;
    }

    private static ReadOnlySpan<byte> AfterIndex(ReadOnlySpan<byte> index) =>
        Span(index, out int start, out int[] ends) && start + ends[^1] <= index.Length ? index[(start + ends[^1])..] : [];

    private static ReadOnlySpan<byte> FirstOfIndex(ReadOnlySpan<byte> index) =>
        Span(index, out int start, out int[] ends) && start + ends[1] <= index.Length ? index[(start + ends[0])..(start + ends[1])] : [];

    // Where an index's things lie, counted from their start; whether it holds one at least.
    private static bool Span(ReadOnlySpan<byte> index, out int start, out int[] ends)
    {
        int count = index.Length > 3 ? (index[0] << 8) | index[1] : 0;
        int size = count > 0 ? index[2] : 0;
        start = 3 + (size * (count + 1));
        ends = new int[count + 1];
        if (count == 0 || size is < 1 or > 4 || start > index.Length)
        {
            return false;
        }

        for (int i = 0; i <= count; i++)
        {
            for (int k = 0; k < size; k++)
            {
                ends[i] = (ends[i] << 8) | index[3 + (i * size) + k];
            }

            ends[i]--;
        }

        return ends.All(e => e >= 0) && ends[0] <= ends[^1] && ends[0] <= ends[1];
    }
}

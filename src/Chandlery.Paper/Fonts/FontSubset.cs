using System.Buffers.Binary;
using System.Text;

namespace Chandlery.Paper.Fonts;

/// <summary>
/// Cuts a TrueType font down to the glyphs that a document uses. Glyph numbers stay as they are, so text shaped with the
/// full font can be drawn with the subset; unused outlines are emptied, and the character map holds just what was
/// written, so that text read back from the PDF is the text that was set (OpenType specification 1.9.1: glyf, loca, cmap).
/// </summary>
public static class FontSubset
{
    private static readonly string[] KeptTables = ["OS/2", "cvt ", "fpgm", "head", "hhea", "maxp", "name", "prep"];

    /// <summary>A font file with these glyphs.</summary>
    /// <param name="font">The full font.</param>
    /// <param name="glyphByCodePoint">The glyphs in use, by the character that they stand for.</param>
    /// <param name="glyphs">All glyphs in use, with or without a character of their own.</param>
    public static byte[] Make(byte[] font, IReadOnlyDictionary<int, ushort> glyphByCodePoint, IEnumerable<ushort> glyphs)
    {
        Dictionary<string, (int Offset, int Length)> tables = ReadDirectory(font);
        ReadOnlySpan<byte> head = Table(font, tables, "head");
        bool longOffsets = BinaryPrimitives.ReadInt16BigEndian(head[50..]) == 1;
        int count = BinaryPrimitives.ReadUInt16BigEndian(Table(font, tables, "maxp")[4..]);
        int[] offsets = ReadOffsets(Table(font, tables, "loca"), count, longOffsets);
        byte[] outlines = Table(font, tables, "glyf").ToArray();
        SortedSet<int> used = Close(glyphs, outlines, offsets);

        // Numbers above the last used glyph are never asked for.
        int kept = Math.Min(count, used.Max + 1);
        (byte[] glyf, byte[] loca) = CutOutlines(outlines, offsets, used, kept);
        var result = new SortedDictionary<string, byte[]>(StringComparer.Ordinal)
        {
            ["cmap"] = CharacterMap(glyphByCodePoint),
            ["glyf"] = glyf,
            ["loca"] = loca,
            ["post"] = EmptyNames(Table(font, tables, "post")),
        };
        foreach (string name in KeptTables.Where(tables.ContainsKey))
        {
            result[name] = Table(font, tables, name).ToArray();
        }

        result["hmtx"] = CutAdvances(Table(font, tables, "hmtx"), result["hhea"], kept);
        BinaryPrimitives.WriteUInt16BigEndian(result["maxp"].AsSpan(4), (ushort)kept);
        BinaryPrimitives.WriteInt16BigEndian(result["head"].AsSpan(50), 1);
        return WriteFont(result);
    }

    private static Dictionary<string, (int Offset, int Length)> ReadDirectory(byte[] font)
    {
        int tables = BinaryPrimitives.ReadUInt16BigEndian(font.AsSpan(4));
        var directory = new Dictionary<string, (int, int)>();
        for (int i = 0; i < tables; i++)
        {
            ReadOnlySpan<byte> row = font.AsSpan(12 + (16 * i), 16);
            directory[Encoding.ASCII.GetString(row[..4])] = (
                BinaryPrimitives.ReadInt32BigEndian(row[8..]),
                BinaryPrimitives.ReadInt32BigEndian(row[12..])
            );
        }

        return directory;
    }

    private static ReadOnlySpan<byte> Table(byte[] font, Dictionary<string, (int Offset, int Length)> tables, string name) =>
        font.AsSpan(tables[name].Offset, tables[name].Length);

    private static int[] ReadOffsets(ReadOnlySpan<byte> loca, int count, bool longOffsets)
    {
        var offsets = new int[count + 1];
        for (int i = 0; i <= count; i++)
        {
            offsets[i] = longOffsets
                ? BinaryPrimitives.ReadInt32BigEndian(loca[(4 * i)..])
                : 2 * BinaryPrimitives.ReadUInt16BigEndian(loca[(2 * i)..]);
        }

        return offsets;
    }

    // Composite glyphs draw other glyphs: those are needed too.
    private static SortedSet<int> Close(IEnumerable<ushort> glyphs, byte[] outlines, int[] offsets)
    {
        var used = new SortedSet<int> { 0 };
        var open = new Stack<int>(glyphs.Select(g => (int)g));
        while (open.TryPop(out int glyph))
        {
            if (!used.Add(glyph) || offsets[glyph] == offsets[glyph + 1])
            {
                continue;
            }

            ReadOnlySpan<byte> outline = outlines.AsSpan(offsets[glyph]..offsets[glyph + 1]);
            if (BinaryPrimitives.ReadInt16BigEndian(outline) >= 0)
            {
                continue;
            }

            int at = 10;
            int flags;
            do
            {
                flags = BinaryPrimitives.ReadUInt16BigEndian(outline[at..]);
                open.Push(BinaryPrimitives.ReadUInt16BigEndian(outline[(at + 2)..]));
                at += 4 + ((flags & 0x0001) != 0 ? 4 : 2);
                at +=
                    (flags & 0x0008) != 0 ? 2
                    : (flags & 0x0040) != 0 ? 4
                    : (flags & 0x0080) != 0 ? 8
                    : 0;
            } while ((flags & 0x0020) != 0);
        }

        return used;
    }

    private static (byte[] Glyf, byte[] Loca) CutOutlines(byte[] outlines, int[] offsets, SortedSet<int> used, int kept)
    {
        using var glyf = new MemoryStream();
        var loca = new byte[4 * (kept + 1)];
        for (int glyph = 0; glyph < kept; glyph++)
        {
            BinaryPrimitives.WriteInt32BigEndian(loca.AsSpan(4 * glyph), (int)glyf.Length);
            if (used.Contains(glyph))
            {
                glyf.Write(outlines, offsets[glyph], offsets[glyph + 1] - offsets[glyph]);
                while (glyf.Length % 4 != 0)
                {
                    glyf.WriteByte(0);
                }
            }
        }

        BinaryPrimitives.WriteInt32BigEndian(loca.AsSpan(4 * kept), (int)glyf.Length);
        return (glyf.ToArray(), loca);
    }

    private static byte[] CutAdvances(ReadOnlySpan<byte> hmtx, byte[] hhea, int kept)
    {
        int full = BinaryPrimitives.ReadUInt16BigEndian(hhea.AsSpan(34));
        if (kept <= full)
        {
            BinaryPrimitives.WriteUInt16BigEndian(hhea.AsSpan(34), (ushort)kept);
            return hmtx[..(4 * kept)].ToArray();
        }

        return hmtx[..((4 * full) + (2 * (kept - full)))].ToArray();
    }

    // Format 12: groups of code points; one group per character keeps it simple.
    private static byte[] CharacterMap(IReadOnlyDictionary<int, ushort> glyphByCodePoint)
    {
        int groups = glyphByCodePoint.Count;
        var map = new byte[12 + 16 + (12 * groups)];
        Span<byte> span = map;
        BinaryPrimitives.WriteUInt16BigEndian(span[2..], 1);
        BinaryPrimitives.WriteUInt16BigEndian(span[4..], 3);
        BinaryPrimitives.WriteUInt16BigEndian(span[6..], 10);
        BinaryPrimitives.WriteInt32BigEndian(span[8..], 12);
        BinaryPrimitives.WriteUInt16BigEndian(span[12..], 12);
        BinaryPrimitives.WriteInt32BigEndian(span[16..], 16 + (12 * groups));
        BinaryPrimitives.WriteInt32BigEndian(span[24..], groups);
        int at = 28;
        foreach ((int codePoint, ushort glyph) in glyphByCodePoint.OrderBy(p => p.Key))
        {
            BinaryPrimitives.WriteInt32BigEndian(span[at..], codePoint);
            BinaryPrimitives.WriteInt32BigEndian(span[(at + 4)..], codePoint);
            BinaryPrimitives.WriteInt32BigEndian(span[(at + 8)..], glyph);
            at += 12;
        }

        return map;
    }

    // Version 3 of the table carries no glyph names.
    private static byte[] EmptyNames(ReadOnlySpan<byte> post)
    {
        byte[] table = post[..32].ToArray();
        BinaryPrimitives.WriteInt32BigEndian(table, 0x00030000);
        return table;
    }

    private static byte[] WriteFont(SortedDictionary<string, byte[]> tables)
    {
        using var font = new MemoryStream();
        Span<byte> number = stackalloc byte[4];
        int power = 1;
        int log = 0;
        while (power * 2 <= tables.Count)
        {
            power *= 2;
            log++;
        }

        Write32(font, 0x00010000, number);
        Write16(font, tables.Count, number);
        Write16(font, power * 16, number);
        Write16(font, log, number);
        Write16(font, (tables.Count * 16) - (power * 16), number);
        int offset = 12 + (16 * tables.Count);
        foreach ((string name, byte[] table) in tables)
        {
            font.Write(Encoding.ASCII.GetBytes(name));
            Write32(font, (int)Checksum(table), number);
            Write32(font, offset, number);
            Write32(font, table.Length, number);
            offset += (table.Length + 3) / 4 * 4;
        }

        foreach (byte[] table in tables.Values)
        {
            font.Write(table);
            font.Write(new byte[((table.Length + 3) / 4 * 4) - table.Length]);
        }

        return font.ToArray();
    }

    private static uint Checksum(byte[] table)
    {
        uint sum = 0;
        for (int i = 0; i < table.Length; i += 4)
        {
            uint word = 0;
            for (int j = 0; j < 4; j++)
            {
                word = (word << 8) | (i + j < table.Length ? table[i + j] : 0u);
            }

            sum += word;
        }

        return sum;
    }

    private static void Write32(Stream stream, int value, Span<byte> number)
    {
        BinaryPrimitives.WriteInt32BigEndian(number, value);
        stream.Write(number);
    }

    private static void Write16(Stream stream, int value, Span<byte> number)
    {
        BinaryPrimitives.WriteInt16BigEndian(number, (short)value);
        stream.Write(number[..2]);
    }
}

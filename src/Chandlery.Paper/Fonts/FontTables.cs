using System.Buffers.Binary;
using System.Text;

namespace Chandlery.Paper.Fonts;

/// <summary>The tables of a font file (OpenType specification 1.9.1, font file).</summary>
internal sealed class FontTables
{
    private const int DirectoryStart = 12;
    private const int DirectoryRow = 16;

    private readonly byte[] font;
    private readonly Dictionary<string, (int Offset, int Length)> places;

    private FontTables(byte[] font, Dictionary<string, (int Offset, int Length)> places)
    {
        this.font = font;
        this.places = places;
    }

    /// <summary>Opens a TrueType or OpenType file; null when it is none, or when one of its tables does not lie within it.</summary>
    public static FontTables? Read(byte[] font)
    {
        if (font.Length < DirectoryStart || BinaryPrimitives.ReadUInt32BigEndian(font) is not (0x00010000 or 0x4F54544F or 0x74727565))
        {
            return null;
        }

        int count = BinaryPrimitives.ReadUInt16BigEndian(font.AsSpan(4));
        if (font.Length < DirectoryStart + (DirectoryRow * count))
        {
            return null;
        }

        var places = new Dictionary<string, (int, int)>();
        for (int i = 0; i < count; i++)
        {
            ReadOnlySpan<byte> row = font.AsSpan(DirectoryStart + (DirectoryRow * i), DirectoryRow);
            uint offset = BinaryPrimitives.ReadUInt32BigEndian(row[8..]);
            uint length = BinaryPrimitives.ReadUInt32BigEndian(row[12..]);
            if (offset + (ulong)length > (ulong)font.Length)
            {
                return null;
            }

            places[Encoding.ASCII.GetString(row[..4])] = ((int)offset, (int)length);
        }

        return new FontTables(font, places);
    }

    /// <summary>Whether it has this table.</summary>
    public bool Has(string table) => places.ContainsKey(table);

    /// <summary>A table's bytes; empty when it is missing.</summary>
    public ReadOnlySpan<byte> Of(string table) =>
        places.TryGetValue(table, out (int Offset, int Length) place) ? font.AsSpan(place.Offset, place.Length) : [];

    /// <summary>A signed number of 16 bits; 0 where the table does not reach so far.</summary>
    public int Signed(string table, int at)
    {
        ReadOnlySpan<byte> bytes = Of(table);
        return bytes.Length >= at + 2 ? BinaryPrimitives.ReadInt16BigEndian(bytes[at..]) : 0;
    }

    /// <summary>An unsigned number of 16 bits; 0 where the table does not reach so far.</summary>
    public int Unsigned(string table, int at) => (ushort)Signed(table, at);
}

using System.Buffers.Binary;
using System.IO.Hashing;

namespace Chandlery.Paper.Drawing;

/// <summary>The parts of a PNG file that we write ourselves.</summary>
internal static class PngChunks
{
    /// <summary>Millimetres in an inch.</summary>
    public const double MmPerInch = 25.4;

    /// <summary>A chunk: length, name, data and checksum (PNG specification, 5.3).</summary>
    public static byte[] Chunk(ReadOnlySpan<byte> name, ReadOnlySpan<byte> data)
    {
        var chunk = new byte[12 + data.Length];
        BinaryPrimitives.WriteInt32BigEndian(chunk, data.Length);
        name.CopyTo(chunk.AsSpan(4));
        data.CopyTo(chunk.AsSpan(8));
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(8 + data.Length), Crc32.HashToUInt32(chunk.AsSpan(4, 4 + data.Length)));
        return chunk;
    }

    /// <summary>The chunk that tells the resolution (PNG specification, 11.3.4.3).</summary>
    public static byte[] Resolution(double dotsPerInch)
    {
        var data = new byte[9];
        int dotsPerMetre = (int)Math.Round(dotsPerInch / MmPerInch * 1000);
        BinaryPrimitives.WriteInt32BigEndian(data, dotsPerMetre);
        BinaryPrimitives.WriteInt32BigEndian(data.AsSpan(4), dotsPerMetre);
        data[8] = 1;
        return Chunk("pHYs"u8, data);
    }
}

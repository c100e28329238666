using System.IO.Compression;

namespace Chandlery.Paper.Pdf;

/// <summary>Packs streams (ISO 32000-1, 7.4.4).</summary>
internal static class Deflater
{
    // Measured on labels and sheets: higher levels gain less than a hundredth and take twice as long.
    private static readonly ZLibCompressionOptions Options = new() { CompressionLevel = 6 };

    /// <summary>The bytes packed.</summary>
    public static byte[] Pack(ReadOnlySpan<byte> data)
    {
        using var packed = new MemoryStream((data.Length / 2) + 64);
        using (var zlib = new ZLibStream(packed, Options, leaveOpen: true))
        {
            zlib.Write(data);
        }

        return packed.ToArray();
    }
}

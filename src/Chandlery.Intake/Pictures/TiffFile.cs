using System.Buffers.Binary;

namespace Chandlery.Intake.Pictures;

/// <summary>Writes grey pictures into one file, uncompressed.</summary>
/// <remarks>TIFF revision 6.0 (Adobe, 1992): section 2 for the file's structure, section 4 for grey pictures.</remarks>
internal static class TiffFile
{
    private const int HeaderBytes = 8;
    private const int EntryBytes = 12;
    private const ushort Short = 3;
    private const ushort Long = 4;
    private const ushort Rational = 5;

    /// <summary>The file, a page for each picture.</summary>
    /// <param name="pictures">The pictures.</param>
    /// <param name="dotsPerInch">Their resolution.</param>
    public static byte[] Write(IReadOnlyList<GreyPicture> pictures, int dotsPerInch)
    {
        using var file = new MemoryStream();
        file.Write("II*\0"u8);
        file.Write(Four(HeaderBytes));
        int after = HeaderBytes;
        for (int i = 0; i < pictures.Count; i++)
        {
            GreyPicture picture = pictures[i];
            int bytes = picture.Width * picture.Height;
            (ushort Tag, ushort Type, int Value)[] entries =
            [
                (256, Long, picture.Width),
                (257, Long, picture.Height),
                (258, Short, 8),
                (259, Short, 1),
                (262, Short, 1),
                (273, Long, 0),
                (277, Short, 1),
                (278, Long, picture.Height),
                (279, Long, bytes),
                (282, Rational, 0),
                (283, Rational, 0),
                (296, Short, 2),
            ];
            int resolution = after + 2 + (entries.Length * EntryBytes) + 4;
            int pixels = resolution + 8;
            int end = pixels + bytes + (bytes % 2);
            file.Write(Two((ushort)entries.Length));
            foreach ((ushort tag, ushort type, int value) in entries)
            {
                file.Write(Two(tag));
                file.Write(Two(type));
                file.Write(Four(1));
                file.Write(
                    Four(
                        type == Rational ? resolution
                        : tag == 273 ? pixels
                        : value
                    )
                );
            }

            file.Write(Four(i + 1 < pictures.Count ? end : 0));
            file.Write(Four(dotsPerInch));
            file.Write(Four(1));
            file.Write(picture.Pixels);
            file.Write(new byte[bytes % 2]);
            after = end;
        }

        return file.ToArray();
    }

    private static byte[] Two(ushort value)
    {
        var bytes = new byte[2];
        BinaryPrimitives.WriteUInt16LittleEndian(bytes, value);
        return bytes;
    }

    private static byte[] Four(int value)
    {
        var bytes = new byte[4];
        BinaryPrimitives.WriteInt32LittleEndian(bytes, value);
        return bytes;
    }
}

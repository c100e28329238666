using System.Buffers.Binary;

namespace Chandlery.Tests.Pdf;

/// <summary>A plate as Ghostscript's tiffsep writes it unpacked: 255 for no ink, 0 for full cover (TIFF 6.0, greyscale).</summary>
/// <param name="Width">Dots in a row.</param>
/// <param name="Pixels">All rows, from the top.</param>
internal sealed record Plate(int Width, byte[] Pixels)
{
    public const double DotsPerMm = 150 / 25.4;

    public static Plate Read(string file)
    {
        byte[] tiff = File.ReadAllBytes(file);
        Assert.Equal("II"u8, tiff.AsSpan(0, 2));
        int directory = BinaryPrimitives.ReadInt32LittleEndian(tiff.AsSpan(4));
        int entries = BinaryPrimitives.ReadUInt16LittleEndian(tiff.AsSpan(directory));
        int[] Values(int tag)
        {
            for (int i = 0; i < entries; i++)
            {
                Span<byte> entry = tiff.AsSpan(directory + 2 + (12 * i), 12);
                if (BinaryPrimitives.ReadUInt16LittleEndian(entry) == tag)
                {
                    int kind = BinaryPrimitives.ReadUInt16LittleEndian(entry[2..]);
                    int count = BinaryPrimitives.ReadInt32LittleEndian(entry[4..]);
                    int size = kind == 3 ? 2 : 4;
                    Span<byte> data = size * count <= 4 ? entry[8..] : tiff.AsSpan(BinaryPrimitives.ReadInt32LittleEndian(entry[8..]));
                    var values = new int[count];
                    for (int k = 0; k < count; k++)
                    {
                        values[k] =
                            size == 2
                                ? BinaryPrimitives.ReadUInt16LittleEndian(data[(2 * k)..])
                                : BinaryPrimitives.ReadInt32LittleEndian(data[(4 * k)..]);
                    }

                    return values;
                }
            }

            throw new InvalidDataException($"no entry {tag}");
        }

        Assert.Equal([1], Values(259));
        Assert.Equal([1], Values(262));
        return new Plate(Values(256)[0], [.. Values(273).Zip(Values(279)).SelectMany(s => tiff[s.First..(s.First + s.Second)])]);
    }

    /// <summary>The cover at a place in millimetres from the top left of the bleed.</summary>
    public byte At(double xMm, double yMm) => Pixels[((int)(yMm * DotsPerMm) * Width) + (int)(xMm * DotsPerMm)];

    /// <summary>All covers within a box in millimetres.</summary>
    public IReadOnlyList<byte> Box(double left, double top, double right, double bottom)
    {
        var found = new List<byte>();
        for (int y = (int)(top * DotsPerMm); y < bottom * DotsPerMm; y++)
        {
            for (int x = (int)(left * DotsPerMm); x < right * DotsPerMm; x++)
            {
                found.Add(Pixels[(y * Width) + x]);
            }
        }

        return found;
    }
}

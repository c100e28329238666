using System.Buffers.Binary;
using System.Text;

namespace Chandlery.Paper.Pdf;

/// <summary>
/// A colour profile of sRGB, written from the figures of IEC 61966-2-1 in the form of ICC.1:2004-10 (version 4.2): primaries and white
/// as chromaticities, adapted to the profile's own white by the method of Bradford, and the transfer curve as its formula.
/// </summary>
internal static class SrgbProfile
{
    private const int HeaderLength = 128;
    private const int TagRow = 12;

    // IEC 61966-2-1, 4.1: chromaticities of the primaries and of the white D65.
    private static readonly (double X, double Y)[] Primaries = [(0.64, 0.33), (0.30, 0.60), (0.15, 0.06)];
    private static readonly (double X, double Y) White = (0.3127, 0.3290);

    // IEC 61966-2-1, 5.2: exponent, slopes and offset of the curve, and where its straight part ends.
    private static readonly double[] Curve = [2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045];

    // ICC.1:2004-10, 7.2.16: the white of the space that profiles lead to.
    private static readonly double[] ProfileWhite = [0.9642, 1, 0.8249];

    // ICC.1:2004-10, annex E: the responses of Bradford's method.
    private static readonly double[,] Bradford =
    {
        { 0.8951, 0.2664, -0.1614 },
        { -0.7502, 1.7135, 0.0367 },
        { 0.0389, -0.0685, 1.0296 },
    };

    /// <summary>The profile's bytes.</summary>
    public static byte[] Make()
    {
        double[,] adaptation = Adaptation(Point(White));
        double[,] primaries = Matrix.Multiply(adaptation, PrimariesOfWhite());
        byte[] curve = Curved();
        (string Name, byte[] Data)[] tags =
        [
            ("desc", Text("sRGB IEC61966-2.1")),
            ("cprt", Text("Written from published figures; no rights are claimed.")),
            ("wtpt", Place(ProfileWhite)),
            ("chad", Numbers("sf32", [.. adaptation.Cast<double>()])),
            ("rXYZ", Place(Column(primaries, 0))),
            ("gXYZ", Place(Column(primaries, 1))),
            ("bXYZ", Place(Column(primaries, 2))),
            ("rTRC", curve),
            ("gTRC", curve),
            ("bTRC", curve),
        ];
        return Assemble(tags);
    }

    private static byte[] Assemble((string Name, byte[] Data)[] tags)
    {
        var places = new Dictionary<byte[], int>(ReferenceEqualityComparer.Instance);
        int end = HeaderLength + 4 + (TagRow * tags.Length);
        foreach ((string _, byte[] data) in tags)
        {
            if (places.TryAdd(data, end))
            {
                end += (data.Length + 3) / 4 * 4;
            }
        }

        var profile = new byte[end];
        Header(profile);
        BinaryPrimitives.WriteInt32BigEndian(profile.AsSpan(HeaderLength), tags.Length);
        int row = HeaderLength + 4;
        foreach ((string name, byte[] data) in tags)
        {
            Encoding.ASCII.GetBytes(name, profile.AsSpan(row));
            BinaryPrimitives.WriteInt32BigEndian(profile.AsSpan(row + 4), places[data]);
            BinaryPrimitives.WriteInt32BigEndian(profile.AsSpan(row + 8), data.Length);
            data.CopyTo(profile, places[data]);
            row += TagRow;
        }

        return profile;
    }

    // ICC.1:2004-10, 7.2.
    private static void Header(byte[] profile)
    {
        BinaryPrimitives.WriteInt32BigEndian(profile, profile.Length);
        BinaryPrimitives.WriteInt32BigEndian(profile.AsSpan(8), 0x04200000);
        Encoding.ASCII.GetBytes("mntrRGB XYZ ", profile.AsSpan(12));
        foreach ((int at, ushort value) in new (int, ushort)[] { (24, 2026), (26, 1), (28, 1) })
        {
            BinaryPrimitives.WriteUInt16BigEndian(profile.AsSpan(at), value);
        }

        Encoding.ASCII.GetBytes("acsp", profile.AsSpan(36));
        for (int i = 0; i < ProfileWhite.Length; i++)
        {
            BinaryPrimitives.WriteInt32BigEndian(profile.AsSpan(68 + (4 * i)), Fixed(ProfileWhite[i]));
        }
    }

    // The primaries' own lightness follows from the white that all three make together.
    private static double[,] PrimariesOfWhite()
    {
        var columns = new double[3, 3];
        for (int i = 0; i < 3; i++)
        {
            double[] point = Point(Primaries[i]);
            for (int row = 0; row < 3; row++)
            {
                columns[row, i] = point[row];
            }
        }

        double[] amounts = Matrix.Multiply(Matrix.Inverse(columns), Point(White));
        return Matrix.Multiply(columns, Matrix.Diagonal(amounts));
    }

    private static double[,] Adaptation(double[] from)
    {
        double[] responses = Matrix.Multiply(Bradford, from);
        double[] wanted = Matrix.Multiply(Bradford, ProfileWhite);
        double[] factors = [.. wanted.Zip(responses, (w, r) => w / r)];
        return Matrix.Multiply(Matrix.Inverse(Bradford), Matrix.Multiply(Matrix.Diagonal(factors), Bradford));
    }

    private static double[] Point((double X, double Y) chromaticity) =>
        [chromaticity.X / chromaticity.Y, 1, (1 - chromaticity.X - chromaticity.Y) / chromaticity.Y];

    private static double[] Column(double[,] matrix, int column) => [matrix[0, column], matrix[1, column], matrix[2, column]];

    private static byte[] Place(double[] values) => Numbers("XYZ ", values);

    private static byte[] Numbers(string kind, double[] values)
    {
        var data = new byte[8 + (4 * values.Length)];
        Encoding.ASCII.GetBytes(kind, data);
        for (int i = 0; i < values.Length; i++)
        {
            BinaryPrimitives.WriteInt32BigEndian(data.AsSpan(8 + (4 * i)), Fixed(values[i]));
        }

        return data;
    }

    // A parametric curve of the third kind: a power above, a straight line below.
    private static byte[] Curved()
    {
        byte[] plain = Numbers("para", Curve);
        return [.. plain[..8], 0, 3, 0, 0, .. plain[8..]];
    }

    private static byte[] Text(string text)
    {
        var data = new byte[28 + (2 * text.Length)];
        Encoding.ASCII.GetBytes("mluc", data);
        BinaryPrimitives.WriteInt32BigEndian(data.AsSpan(8), 1);
        BinaryPrimitives.WriteInt32BigEndian(data.AsSpan(12), TagRow);
        Encoding.ASCII.GetBytes("enUS", data.AsSpan(16));
        BinaryPrimitives.WriteInt32BigEndian(data.AsSpan(20), 2 * text.Length);
        BinaryPrimitives.WriteInt32BigEndian(data.AsSpan(24), 28);
        Encoding.BigEndianUnicode.GetBytes(text, data.AsSpan(28));
        return data;
    }

    private static int Fixed(double value) => (int)Math.Round(value * 65536);
}

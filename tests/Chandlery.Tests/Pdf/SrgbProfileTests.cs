using System.Buffers.Binary;
using System.Text;
using Chandlery.Paper.Pdf;
using Chandlery.Tests.Support;
using SkiaSharp;

namespace Chandlery.Tests.Pdf;

/// <summary>The colour profile that we write.</summary>
public class SrgbProfileTests
{
    private static byte[] Profile { get; } = SrgbProfile.Make();

    [Outside("SkiaSharp's own sRGB: its curve and its way to XYZ of the white D50")]
    [Fact]
    public void A_colour_engine_reads_it_as_srgb()
    {
        using SKColorSpaceIccProfile read = SKColorSpaceIccProfile.Create(Profile)!;
        Assert.NotNull(read);
        using SKColorSpace space = SKColorSpace.CreateIcc(read)!;
        using SKColorSpace srgb = SKColorSpace.CreateSrgb();
        Assert.True(space.GammaIsCloseToSrgb);
        float[] ours = space.ToColorSpaceXyz().Values;
        float[] theirs = srgb.ToColorSpaceXyz().Values;
        Assert.All(ours.Zip(theirs), p => Assert.Equal(p.Second, p.First, 0.0005));
    }

    // The figures that profiles of sRGB print for the primaries under D50, from IEC 61966-2-1 by Bradford's method.
    [Outside("ICC, sRGB profiles: rXYZ 0.4360 0.2225 0.0139, gXYZ 0.3851 0.7169 0.0971, bXYZ 0.1431 0.0606 0.7141; from memory")]
    [Theory]
    [InlineData("rXYZ", 0.4360, 0.2225, 0.0139)]
    [InlineData("gXYZ", 0.3851, 0.7169, 0.0971)]
    [InlineData("bXYZ", 0.1431, 0.0606, 0.7141)]
    [InlineData("wtpt", 0.9642, 1, 0.8249)]
    public void Primaries_are_those_of_the_standard(string tag, double x, double y, double z)
    {
        int at = Place(tag);
        double[] found =
        [
            .. Enumerable.Range(0, 3).Select(i => BinaryPrimitives.ReadInt32BigEndian(Profile.AsSpan(at + 8 + (4 * i))) / 65536.0),
        ];
        Assert.Equal(x, found[0], 0.0002);
        Assert.Equal(y, found[1], 0.0002);
        Assert.Equal(z, found[2], 0.0002);
    }

    [Outside("ICC.1:2004-10, 7.2: size, version, signature and alignment; from memory")]
    [Fact]
    public void The_header_is_sound()
    {
        Assert.Equal(Profile.Length, BinaryPrimitives.ReadInt32BigEndian(Profile));
        Assert.Equal("mntrRGB XYZ ", Encoding.ASCII.GetString(Profile, 12, 12));
        Assert.Equal("acsp", Encoding.ASCII.GetString(Profile, 36, 4));
        Assert.Equal(0, Place("rTRC") % 4);
        Assert.Equal(0, Profile.Length % 4);
    }

    private static int Place(string tag)
    {
        int count = BinaryPrimitives.ReadInt32BigEndian(Profile.AsSpan(128));
        int row = Enumerable.Range(0, count).Select(i => 132 + (12 * i)).Single(r => Encoding.ASCII.GetString(Profile, r, 4) == tag);
        return BinaryPrimitives.ReadInt32BigEndian(Profile.AsSpan(row + 4));
    }
}

using System.Buffers.Binary;
using System.Text;
using Chandlery.Paper.Fonts;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Pdf;

/// <summary>Fonts that may not be embedded.</summary>
public class EmbeddingRightTests
{
    private static byte[] Inter => [.. Face.Of(Weight.Regular).Data];

    [Outside(
        "OpenType specification 1.9.1, OS/2 table, fsType: bits 1, 8, 9 bar embedding, a part, outlines; 2 and 3 allow it; from memory"
    )]
    [Theory]
    [InlineData(0x0000, null)]
    [InlineData(0x0002, "bit 1")]
    [InlineData(0x0004, null)]
    [InlineData(0x0008, null)]
    [InlineData(0x000A, null)]
    [InlineData(0x0100, "bit 8")]
    [InlineData(0x0108, "bit 8")]
    [InlineData(0x0200, "bit 9")]
    public void The_rights_in_the_file_are_kept(int rights, string? said)
    {
        byte[] font = Inter;
        BinaryPrimitives.WriteUInt16BigEndian(font.AsSpan(Place(font, "OS/2") + 8), (ushort)rights);
        string? refusal = EmbeddingRight.Refusal(font);
        if (said is null)
        {
            Assert.Null(refusal);
        }
        else
        {
            Assert.Contains(said, refusal, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void What_is_no_font_is_refused()
    {
        Assert.Contains(".ttf or .otf", EmbeddingRight.Refusal("wOFF and more than twelve bytes"u8.ToArray()), StringComparison.Ordinal);
        Assert.Contains(".ttf or .otf", EmbeddingRight.Refusal([]), StringComparison.Ordinal);
        Assert.Contains(".ttf or .otf", EmbeddingRight.Refusal(Inter[..5000]), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("cmap", "lacks")]
    [InlineData("glyf", "no outlines")]
    [InlineData("OS/2", "does not say")]
    public void A_file_without_what_is_needed_is_refused(string table, string said)
    {
        byte[] font = Inter;
        "none"u8.CopyTo(font.AsSpan(Row(font, table)));
        Assert.Contains(said, EmbeddingRight.Refusal(font), StringComparison.Ordinal);
    }

    private static int Place(byte[] font, string table) => BinaryPrimitives.ReadInt32BigEndian(font.AsSpan(Row(font, table) + 8));

    private static int Row(byte[] font, string table) =>
        Enumerable.Range(0, font[5]).Select(i => 12 + (16 * i)).Single(r => Encoding.ASCII.GetString(font, r, 4) == table);
}

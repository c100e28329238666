using Chandlery.Intake.Pages;
using Chandlery.Intake.Pictures;
using Chandlery.Paper.Fonts;
using SkiaSharp;

namespace Chandlery.Tests.Intake;

/// <summary>What is done to the picture of a page before its words are recognised.</summary>
public sealed class PictureTests
{
    private const byte Ink = 128;
    private const double PixelsPerMm = 300 / 25.4;

    [Theory]
    [InlineData(0)]
    [InlineData(0.7)]
    [InlineData(-1.3)]
    public void A_page_that_lies_askew_is_found_to(double degrees)
    {
        GreyPicture page = Drawn(canvas =>
        {
            canvas.RotateDegrees((float)degrees, 600, 400);
            for (int line = 1; line < 16; line++)
            {
                Write(canvas, "Tetramethyl acetyloctahydronaphthalenes 54464-57-2, 10 - 25 %", 60, line * 50);
            }
        });
        Assert.Equal(-degrees, Skew.Of(page, Ink), 0.08);
    }

    [Fact]
    public void The_grain_of_the_paper_goes_and_the_ink_stays()
    {
        GreyPicture page = Drawn(canvas =>
        {
            canvas.Clear(new SKColor(235, 235, 235));
            Write(canvas, "Linalool", 60, 100);
        });
        var all = new PixelBox(0, 0, page.Width, page.Height);
        int ink = page.CountDarker(all, Ink);
        page.Bleach(Ink);
        Assert.Equal(GreyPicture.White, page[5, 5]);
        Assert.Equal(ink, page.CountDarker(all, Ink));
    }

    [Fact]
    public void Ruled_lines_are_found_and_letters_are_none()
    {
        GreyPicture page = Drawn(canvas =>
        {
            Write(canvas, "minimumnummernmommentuminimum", 60, 100);
            Line(canvas, 50, 150, 1100, 150);
            Line(canvas, 50, 150, 50, 600);
        });
        var lines = RulingLines.Of(page, Ink, PixelsPerMm);
        PixelBox level = Assert.Single(lines.Level);
        Assert.InRange(level.Width, 1045, 1060);
        Assert.InRange(level.Top, 147, 150);
        Assert.InRange(Assert.Single(lines.Upright).Height, 445, 460);
    }

    [Fact]
    public void Lines_are_taken_off_and_the_letters_beside_and_across_them_stay()
    {
        static void Words(SKCanvas canvas)
        {
            Write(canvas, "Linalool 78-70-6", 60, 100);
            canvas.DrawRect(300, 130, 4, 40, Black);
        }

        GreyPicture clean = Drawn(Words);
        GreyPicture page = Drawn(canvas =>
        {
            Words(canvas);
            Line(canvas, 50, 150, 1100, 150);
        });
        RulingLines.Of(page, Ink, PixelsPerMm).Erase(page, Ink, PixelsPerMm);
        var all = new PixelBox(0, 0, page.Width, page.Height);
        Assert.InRange(page.CountDarker(all, Ink), clean.CountDarker(all, Ink), clean.CountDarker(all, Ink) + 30);
    }

    [Fact]
    public void The_cells_of_a_table_are_closed_in_by_lines_and_a_frame_around_it_is_none()
    {
        GreyPicture page = Drawn(canvas =>
        {
            Box(canvas, 20, 20, 1180, 780);
            Box(canvas, 100, 100, 1000, 500);
            Line(canvas, 100, 300, 1000, 300);
            Line(canvas, 400, 100, 400, 500);
            Line(canvas, 700, 300, 700, 500);
        });
        IReadOnlyList<PixelBox> cells = CellFinder.Of(RulingLines.Of(page, Ink, PixelsPerMm), page.Width, page.Height, PixelsPerMm);
        Assert.Equal(5, cells.Count);
        Assert.All(cells, c => Assert.InRange(c.Height, 170, 200));
        Assert.Contains(cells, c => c.Width > 550);
    }

    [Fact]
    public void Each_cell_is_recognised_by_itself_and_its_words_stand_where_they_were()
    {
        byte[] file = File(canvas =>
        {
            Box(canvas, 100, 100, 700, 500);
            Line(canvas, 100, 300, 700, 300);
            Line(canvas, 400, 100, 400, 500);
            Write(canvas, "78-70-6", 420, 400);
        });
        PictureWords read = PictureWords.Of(
            file,
            300,
            (pictures, _) =>
            {
                Assert.Equal(2, PagesOf(pictures));
                return "5\t2\t1\t1\t1\t1\t30\t90\t150\t30\t95.1\t78-70-6\n5\t1\t1\t1\t1\t1\t7\t7\t9\t9\t20.0\t|";
            }
        )!;
        Word word = Assert.Single(RecognisedWords.Of(read, new Box(0, 0, read.Width / PixelsPerMm, read.Height / PixelsPerMm)));
        Assert.InRange(word.Box.Left * PixelsPerMm, 405, 440);
        Assert.Equal("78-70-6", word.Text);
    }

    [Theory]
    [InlineData("225-<30", "≥25-<30")]
    [InlineData("27-<15", "≥7-<15")]
    [InlineData("22.5 - < 10", "≥2.5 - < 10")]
    [InlineData("2,5-<10", "2,5-<10")]
    [InlineData("20-<25", "20-<25")]
    [InlineData("s 0,25", "≤ 0,25")]
    [InlineData("s0.25", "≤0.25")]
    [InlineData("2s 5", "2s 5")]
    [InlineData("108-21-4", "108-21-4")]
    public void Signs_that_are_taken_for_letters_and_figures_are_put_right(string recognised, string meant) =>
        Assert.Equal(meant, PictureSigns.Mended(recognised));

    // Pages of a TIFF file, each a directory that names the next one (TIFF revision 6.0, section 2).
    private static int PagesOf(byte[] tiff)
    {
        Assert.Equal("II*\0"u8, tiff.AsSpan(0, 4));
        int count = 0;
        int at = BitConverter.ToInt32(tiff, 4);
        while (at != 0)
        {
            count++;
            at = BitConverter.ToInt32(tiff, at + 2 + (BitConverter.ToUInt16(tiff, at) * 12));
        }

        return count;
    }

    private static readonly SKPaint Black = new() { Color = SKColors.Black };

    private static GreyPicture Drawn(Action<SKCanvas> draw) => GreyPicture.Decode(File(draw))!;

    private static byte[] File(Action<SKCanvas> draw)
    {
        using var bitmap = new SKBitmap(1200, 800);
        using (var canvas = new SKCanvas(bitmap))
        {
            canvas.Clear(SKColors.White);
            draw(canvas);
        }

        using SKData file = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        return file.ToArray();
    }

    private static void Write(SKCanvas canvas, string text, float x, float y)
    {
        using var font = new SKFont(Face.Of(Weight.Bold).Typeface, 33);
        canvas.DrawText(text, x, y, SKTextAlign.Left, font, Black);
    }

    private static void Line(SKCanvas canvas, float fromX, float fromY, float toX, float toY) =>
        canvas.DrawRect(fromX - 1.5f, fromY - 1.5f, toX - fromX + 3, toY - fromY + 3, Black);

    private static void Box(SKCanvas canvas, float left, float top, float right, float bottom)
    {
        Line(canvas, left, top, right, top);
        Line(canvas, left, bottom, right, bottom);
        Line(canvas, left, top, left, bottom);
        Line(canvas, right, top, right, bottom);
    }
}

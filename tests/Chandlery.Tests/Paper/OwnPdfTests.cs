using Chandlery.Core.Assessed;
using Chandlery.Paper.Designs;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Proofs.Reading;
using Chandlery.Tests.Support;
using SkiaSharp;

namespace Chandlery.Tests.Paper;

/// <summary>What our labels are measured by, beside a reader that knows nothing of our writer: PdfPig.</summary>
public class OwnPdfTests
{
    // Points: a thousandth of a millimetre.
    private const double Close = 0.003;

    public static TheoryData<string> Candles =>
        [.. Directory.GetFiles(Path.Combine(TestLaw.DemoFolder, "candles"), "*.yaml").Select(f => "candles/" + Path.GetFileName(f))];

    [Theory]
    [MemberData(nameof(Candles))]
    [Outside("PdfPig reads the same PDF")]
    public void EveryPaperReadsAsAnotherReaderReadsIt(string candle)
    {
        Assessment a = TestLaw.Demo(candle, "IE");
        List<MadePaper> papers = [.. PaperList.Own.All.Select(p => TestLaw.Make(p, a)).OfType<MadePaper>()];
        Assert.NotEmpty(papers);
        foreach (byte[] pdf in papers.Select(p => p.Pdf()))
        {
            IReadOnlyList<PrintedPage>? own = OwnPdf.TryRead(pdf);
            IReadOnlyList<PrintedPage> other = AnyPdf.Read(pdf);
            Assert.NotNull(own);
            Assert.Equal(other.Count, own.Count);
            foreach ((PrintedPage one, PrintedPage two) in own.Zip(other))
            {
                AssertSame(one, two);
            }
        }
    }

    [Fact]
    public void WhatIsBuiltOtherwiseIsLeftToTheOtherReader()
    {
        MadePaper label = TestLaw.Made("label", TestLaw.Demo("candles/fig-tin.yaml", "IE"));
        Assert.NotNull(OwnPdf.TryRead(label.Pdf()));
        Assert.Null(OwnPdf.TryRead(PdfDrawing.Draw(label.Document, PdfPurpose.Press)));
    }

    [Fact]
    public void ThePdfThatWasMeasuredIsTheOneThatGoesOut()
    {
        MadePaper label = TestLaw.Made("label", TestLaw.Demo("candles/fig-tin.yaml", "IE"));
        MadePaper warned = label with { Warnings = ["look at it"] };
        Assert.Same(label.Pdf(), warned.Pdf());
        Assert.Equal(PdfDrawing.Draw(label.Document), label.Pdf());
    }

    private static void AssertSame(PrintedPage own, PrintedPage other)
    {
        Assert.Equal(other.Width, own.Width, Close);
        Assert.Equal(other.Height, own.Height, Close);
        Assert.Equal(string.Concat(other.Letters.Select(l => l.Value)), string.Concat(own.Letters.Select(l => l.Value)));
        foreach ((PrintedLetter one, PrintedLetter two) in own.Letters.Zip(other.Letters))
        {
            Assert.Equal(two.Colour, one.Colour);
            Assert.Equal([two.X, two.Y, two.EndX], [one.X, one.Y, one.EndX], Near);

            // A blank has no outline; the readers differ in what they say of it.
            if (!string.IsNullOrWhiteSpace(one.Value))
            {
                Assert.Equal(two.Height, one.Height, Close);
                Box theirs = two.Outline!.Value;
                Box ours = one.Outline!.Value;
                Assert.Equal([theirs.X, theirs.Y, theirs.Right, theirs.Bottom], [ours.X, ours.Y, ours.Right, ours.Bottom], Near);
            }

            Assert.Equal(two.IsLevel, one.IsLevel);
        }

        // PdfPig overlooks where a curve turns whose ends are equally high: its boxes may be smaller. No frame has such a curve.
        Assert.Equal(other.Areas.Count, own.Areas.Count);
        foreach ((PrintedArea one, PrintedArea two) in own.Areas.Zip(other.Areas))
        {
            Assert.Equal(two.Colour, one.Colour);
            Assert.True(Holds(one.Bounds, two.Bounds));
            Assert.True(!one.Colour.IsRed || Holds(two.Bounds, one.Bounds));
        }
    }

    [Fact]
    [Outside("Skia's bounds of the same curves")]
    public void TheBoxAroundACurveIsTheBoxAroundItsLineAndNotItsHandles()
    {
        var random = new Random(4);
        for (int i = 0; i < 1000; i++)
        {
            (double X, double Y)[] points = [.. Enumerable.Range(0, 4).Select(_ => (random.Next(0, 9) * 1.0, random.Next(0, 9) * 1.0))];
            var own = new PathBounds();
            own.To(points[0]);
            own.To(points[1], points[2], points[3]);
            using var builder = new SKPathBuilder();
            builder.MoveTo(Of(points[0]));
            builder.CubicTo(Of(points[1]), Of(points[2]), Of(points[3]));
            using SKPath path = builder.Detach();
            SKRect box = path.TightBounds;
            Assert.Equal([box.Left, box.Top, box.Right, box.Bottom], [own.Left, own.Bottom, own.Right, own.Top], Near);
        }
    }

    private static SKPoint Of((double X, double Y) point) => new((float)point.X, (float)point.Y);

    private static bool Holds(Box outer, Box inner) =>
        outer.X < inner.X + Close && outer.Y < inner.Y + Close && outer.Right > inner.Right - Close && outer.Bottom > inner.Bottom - Close;

    private static bool Near(double one, double two) => Math.Abs(one - two) < Close;
}

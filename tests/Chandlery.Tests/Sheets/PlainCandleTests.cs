using Chandlery.Core.Assessed;
using Chandlery.Paper.Drawing;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Sheets;

/// <summary>A candle of wax alone is called nothing else, on no paper.</summary>
public sealed class PlainCandleTests
{
    private static Assessment Plain() =>
        TestLaw.DemoEdited(
            Path.Combine("candles", "slate-jar.yaml"),
            "IE",
            text =>
                text.Replace("load: { percent: 6, of: candle }", "load: { percent: 0, of: candle }", StringComparison.Ordinal)
                    .Replace("oils:\n  - { oil: rain-on-slate, share: 100 }", "oils: []", StringComparison.Ordinal)
        );

    [Theory]
    [InlineData("label")]
    [InlineData("burn-card")]
    [InlineData("shop-card")]
    [InlineData("bench-sheet")]
    [InlineData("safety-sheet")]
    [InlineData("product-information")]
    public void No_paper_speaks_of_scent_or_oil(string paper)
    {
        string text = PrintedText.Of(PdfDrawing.Draw(TestLaw.Made(paper, Plain()).Document));
        Assert.DoesNotMatch(@"(?i)\bscent|\bfragran|stir in the oil|\bcure\b", text);
        Assert.Contains("Slate Jar", text, StringComparison.Ordinal);
    }
}

using Chandlery.Core.Asked.Comparisons;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers.Labels;
using Chandlery.Paper.Scenes;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Paper;

public class CardTests
{
    private static PdfReader Print(string candle, string card = "burn-card", string? place = null) =>
        new(PdfDrawing.Draw(TestLaw.Made(card, TestLaw.Demo(candle, place)).Document));

    [Fact]
    public void TheCardIsA6WithAPageForEachLanguage()
    {
        using PdfReader pdf = Print("candles/harbour-bowl.yaml");
        Assert.Equal(2, pdf.Pages.Count);
        Assert.Equal(105, pdf.SizeMm().Width, 2);
        Assert.Equal(148, pdf.SizeMm().Height, 2);
        Assert.Contains("Diese Kerze sicher abbrennen", pdf.Text(1), StringComparison.Ordinal);
    }

    [Outside("EN 15494:2019, 4.4: the four messages for every candle (from two published summaries)")]
    [Fact]
    public void TheFourMessagesStandOnIt()
    {
        using PdfReader pdf = Print("candles/slate-jar.yaml");
        string text = pdf.Text();
        Assert.Contains("Never leave a burning candle unattended.", text, StringComparison.Ordinal);
        Assert.Contains("out of reach of children and pets.", text, StringComparison.Ordinal);
        Assert.Contains("Always leave at least 10 cm between burning candles.", text, StringComparison.Ordinal);
        Assert.Contains("on or near anything that can catch fire.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void TheBowlsCardSpeaksOfItsWicksAndOfTheOutdoors()
    {
        using PdfReader pdf = Print("candles/harbour-bowl.yaml");
        string text = pdf.Text();
        Assert.Contains("Trim all 12 wicks to 5 mm", text, StringComparison.Ordinal);
        Assert.Contains("Burn it outdoors only", text, StringComparison.Ordinal);
        Assert.DoesNotContain("{", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("pocket-card", 74, 105)]
    [InlineData("burn-card", 105, 148)]
    [InlineData("shop-card", 148, 210)]
    public void EveryCardFitsInEveryLanguage(string kind, double width, double height)
    {
        foreach (string place in new[] { "AT", "CZ", "DK", "ES", "FI", "FR", "GR", "IE", "IT", "NL", "PL", "PT", "US" })
        {
            using PdfReader pdf = Print("candles/harbour-bowl.yaml", kind, place);
            Assert.Equal(width, pdf.SizeMm().Width, 2);
            Assert.Equal(height, pdf.SizeMm().Height, 2);
            Assert.DoesNotContain("{", pdf.Text(), StringComparison.Ordinal);
        }
    }

    [Outside("ASTM F2058: WARNING in bold capitals, then three messages (abstract verified, messages from memory)")]
    [Theory]
    [InlineData("pocket-card")]
    [InlineData("burn-card")]
    [InlineData("shop-card")]
    public void TheUnitedStatesHaveTheirWarning(string kind)
    {
        using PdfReader pdf = Print("candles/fig-tin.yaml", kind, "US");
        Assert.Contains(
            "WARNING Burn within sight. Keep away from things that catch fire. Keep away from children and pets.",
            pdf.Text(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void TheShopCardSaysWhatIsInItAndWhomToAsk()
    {
        using PdfReader pdf = Print("candles/harbour-bowl.yaml", "shop-card");
        string text = pdf.Text();
        Assert.Contains("d-Limonene (≤ 1.88 %)", text, StringComparison.Ordinal);
        Assert.Contains("May cause an allergic skin reaction.", text, StringComparison.Ordinal);
        Assert.Contains("+999 20 555 014", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("US", "Net Wt 2.8 oz (80 g)")]
    [InlineData("IE", "80 g")]
    public void TheQuantityIsInThePlacesUnits(string place, string expected)
    {
        var problems = new Problems();
        LabelAttempt label = LabelDocument.Make(
            TestLaw.Demo("candles/fig-tin.yaml", place),
            TestLaw.Shop,
            TestLaw.Lawbook.Burning,
            problems
        )!;
        using var pdf = new PdfReader(PdfDrawing.Draw(new PaperDocument("t", "en", label.Fitted!.Pages)));
        Assert.Contains(expected, pdf.Text(), StringComparison.Ordinal);
    }
}

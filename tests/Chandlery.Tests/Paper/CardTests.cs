using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Paper.Documents;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Scenes;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Paper;

public class CardTests
{
    private static PdfReader Print(string candle, CardKind kind = CardKind.Buyer, string? place = null)
    {
        Assessment a = Bench.Demo(candle, place);
        var problems = new Problems();
        PaperDocument? card = CardDocument.Make(a, kind, Bench.Shop, Bench.Lawbook.Burning, problems);
        Assert.Empty(problems.Found);
        return new PdfReader(PdfDrawing.Draw(card!));
    }

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
}

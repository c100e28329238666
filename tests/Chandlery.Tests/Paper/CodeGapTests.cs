using Chandlery.Core.Assessed;
using Chandlery.Paper.Scenes;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Paper;

/// <summary>Bars are read by a machine and looked at by people: nothing hangs into them.</summary>
public class CodeGapTests
{
    private const double LeastMm = 0.8;

    [Theory]
    [InlineData("IE")]
    [InlineData("NZ")]
    [InlineData("CA")]
    [InlineData("US")]
    [InlineData("AU")]
    public void Tails_of_letters_keep_clear_of_the_bars(string place)
    {
        Assessment a = TestLaw.Demo("candles/slate-jar.yaml", place);
        Scene label = TestLabels.Make(a, null).Fitted!.Pages[^1];
        Mark bars = Assert.Single(label.Marks, m => m.Name == "EAN-13");
        TextItem[] above =
        [
            .. label
                .All.OfType<TextItem>()
                .Where(t => t.BaselineMm < bars.YMm && t.XMm < bars.XMm + bars.WidthMm && bars.XMm < t.XMm + t.WidthMm),
        ];
        Assert.All(
            above,
            t => Assert.True(t.BaselineMm + (t.Face.Descent * t.SizeMm) <= bars.YMm - LeastMm, $"'{t.Shaped.Text}' hangs into the bars")
        );
    }
}

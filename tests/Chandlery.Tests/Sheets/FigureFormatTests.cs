using Chandlery.Core.Quantities;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Sheets;

public sealed class FigureFormatTests
{
    [Theory]
    [InlineData(1.0671, "1.07", "1.06", "1.07 %")]
    [InlineData(1.9516, "1.96", "1.95", "1.95 %")]
    [InlineData(0.0072145, "0.00722", "0.00721", "0.00721 %")]
    [InlineData(0.1, "0.1", "0.1", "0.1 %")]
    [InlineData(99.96, "100", "99.9", "100 %")]
    [InlineData(65.33, "65.4", "65.3", "65.3 %")]
    [InlineData(100, "100", "100", "100 %")]
    [InlineData(0, "0", "0", "0 %")]
    [InlineData(0.00001234, "0.0000124", "0.0000123", "0.0000123 %")]
    public void A_share_has_three_figures_and_is_rounded_outwards(double percent, string atMost, string atLeast, string about)
    {
        FigureFormat english = FigureFormat.English;
        var share = new MassPercent(percent);
        Assert.Equal(
            (atMost, atLeast, about, atMost + " %"),
            (english.AtMostFigure(share), english.AtLeastFigure(share), english.About(share), english.AtMost(share))
        );
    }

    // 0.1 + 0.2 is not quite 0.3 in binary: that is no reason to print more than was declared.
    [Fact]
    public void The_last_bits_of_a_fraction_do_not_round_it_away()
    {
        Assert.Equal("0.3", FigureFormat.English.AtMostFigure(new MassPercent(0.1 + 0.2)));
        Assert.Equal("0.7", FigureFormat.English.AtLeastFigure(new MassPercent(0.7 - 1e-16)));
    }

    [Fact]
    public void What_is_declared_is_not_rounded_to_three_figures()
    {
        Assert.Equal("1610", FigureFormat.English.Declared(1610));
        Assert.Equal("52,25", new FigureFormat(',').Declared(52.25));
    }

    [Outside("Unicode CLDR: the decimal mark of each language")]
    [Fact]
    public void Every_language_says_how_it_writes_figures() =>
        Assert.All(TestLaw.Lawbook.Languages, l => Assert.Equal(l.Code is "en" or "ga" or "mt" ? '.' : ',', l.Figures.DecimalMark));
}

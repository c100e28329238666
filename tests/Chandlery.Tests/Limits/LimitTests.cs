using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Assessed;
using Chandlery.Core.Limits;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Limits;

public class LimitTests
{
    private static LimitCheck Check(string candle, string part) =>
        TestLaw.Demo(candle).Limits.Single(l => l.Name.Contains(part, StringComparison.Ordinal));

    [Fact]
    public void TheTrialBreaksItsLimitsOnPurpose()
    {
        Assessment a = TestLaw.Stopped();
        Assert.True(a.StopsSale);
        Assert.False(Assert.Single(a.Limits, l => l.Name.Contains("load against Soy Flake 52", StringComparison.Ordinal)).Holds);
        LimitCheck flash = Assert.Single(a.Limits, l => l.Name.Contains("flash point of Sweet Orange", StringComparison.Ordinal));
        Assert.False(flash.Holds);
        Assert.Equal(-20, flash.Margin);
    }

    [Fact]
    public void TheBowlHoldsThemAll() => Assert.All(TestLaw.Demo("candles/harbour-bowl.yaml").Limits, l => Assert.True(l.Holds));

    [Fact]
    public void EachOilAndTheBlendAreHeldAgainstIfraCategory12()
    {
        // 8 g of oil for 100 g of wax and 0.2 g of extra; 88 % of the candle is scented melt; a quarter of the oil is Cedar Smoke.
        const double oil = 8 / 108.2 * 88;
        LimitCheck cedar = Check("candles/harbour-bowl.yaml", "IFRA category 12, Cedar Smoke");
        Assert.Equal(60, cedar.Limit);
        Assert.Equal(oil * 0.25, cedar.Value!.Value, 9);
        LimitCheck blend = Check("candles/harbour-bowl.yaml", "IFRA category 12, all oils together");
        Assert.Equal(100 * oil * ((0.3 / 100) + (0.3 / 100) + (0.25 / 60) + (0.15 / 80)), blend.Value!.Value, 9);
    }

    [Fact]
    public void TheVesselIsHeldAgainstTheMoltenVolume()
    {
        LimitCheck volume = Check("candles/harbour-bowl.yaml", "volume");
        Assert.Equal(2900 / 0.83, volume.Value!.Value, 6);
        Assert.Equal(4200 - (Math.PI * 130 * 130 * 12 / 1000), volume.Limit!.Value, 6);
    }
}

using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law;

/// <summary>Figures of the burning advice, which go by the candle (common practice, no source).</summary>
public sealed class BurnFigureTests
{
    [Theory]
    [InlineData(60.0, 1, "6")]
    [InlineData(60.0, 4, "3")]
    [InlineData(61.0, 1, "7")]
    [InlineData(null, 1, "9")] // by the outside, where the inside is not known
    public void The_first_burn_takes_an_hour_for_each_centimetre_that_a_wick_melts(double? insideMm, int wicks, string hours)
    {
        Assessment a = TestLaw.Demo("candles/slate-jar.yaml");
        Candle candle = a.Candle with { Wicks = a.Candle.Wicks with { Count = wicks } };
        Vessel vessel = a.Vessel with { Pieces = 1, Inner = insideMm is { } inside ? Round(inside) : null, Outer = Round(90) };
        BurnAdvice advice = TestLaw.Lawbook.Burning with { FirstBurnHoursPerCm = 1 };
        Assert.Equal(hours, BurnFigures.Of(candle, vessel, advice, FigureFormat.English)["firstHours"]);
    }

    private static VesselSize Round(double millimetres) => new(new RoundSection(new Millimetres(millimetres)), new Millimetres(80));
}

using Chandlery.Core.Asked.Ceilings;
using Chandlery.Core.Assessed;
using Chandlery.Paper.Papers.LoadPlots;
using Chandlery.Paper.Scenes;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Ceilings;

/// <summary>What a person sees on the plot of load against consequences.</summary>
public sealed class PlotTests
{
    public static TheoryData<string, Varied> Plots() =>
        new()
        {
            { "harbour-bowl", Varied.Load },
            { "slate-jar", Varied.Load },
            { "fig-tin", Varied.Load },
        };

    private static Scene Plot(string candle, Varied varied)
    {
        Assessment a = TestLaw.Demo($"candles/{candle}.yaml");
        var finder = new CeilingFinder(a, TestLaw.WaxOf(a), varied);
        return CeilingPlot.Draw(a, varied, finder.Now, finder.Find());
    }

    private static List<TextItem> Texts(Scene plot) => [.. plot.Items.SelectMany(i => i.All).OfType<TextItem>()];

    [Theory]
    [MemberData(nameof(Plots))]
    public void Nothing_is_cut_off(string candle, Varied varied)
    {
        Scene plot = Plot(candle, varied);
        Assert.All(
            Texts(plot),
            t =>
            {
                Assert.InRange(t.XMm, 0, plot.WidthMm - t.WidthMm);
                Assert.InRange(t.BaselineMm, t.SizeMm, plot.HeightMm);
                Assert.DoesNotContain("…", t.Shaped.Text, StringComparison.Ordinal);
            }
        );
    }

    [Theory]
    [MemberData(nameof(Plots))]
    public void No_text_lies_on_another(string candle, Varied varied)
    {
        List<TextItem> texts = Texts(Plot(candle, varied));
        for (int i = 0; i < texts.Count; i++)
        {
            for (int j = i + 1; j < texts.Count; j++)
            {
                TextItem a = texts[i];
                TextItem b = texts[j];
                bool beside = a.XMm + a.WidthMm <= b.XMm || b.XMm + b.WidthMm <= a.XMm;
                bool above = Math.Abs(a.BaselineMm - b.BaselineMm) >= Math.Min(a.SizeMm, b.SizeMm) * 0.9;
                Assert.True(beside || above, $"'{a.Shaped.Text}' and '{b.Shaped.Text}'");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Plots))]
    public void The_mark_of_the_present_runs_below_every_figure(string candle, Varied varied)
    {
        Scene plot = Plot(candle, varied);
        List<SceneItem> items = [.. plot.Items];
        int mark = items.FindIndex(i => i is PathItem { Stroke: { } ink } && ink == Ink.SignalRed);
        double x = ((PathItem)items[mark]).XMm;
        foreach (TextItem figure in Texts(plot).Where(t => t.Ink == Ink.Black && t.Shaped.Text.EndsWith(" %", StringComparison.Ordinal)))
        {
            bool crosses = figure.XMm <= x && x <= figure.XMm + figure.WidthMm;
            Assert.True(!crosses || items.IndexOf(figure) > mark, $"the mark runs through '{figure.Shaped.Text}'");
        }
    }

    [Theory]
    [MemberData(nameof(Plots))]
    public void Only_the_present_value_is_coloured(string candle, Varied varied)
    {
        Scene plot = Plot(candle, varied);
        IEnumerable<Ink> inks = plot
            .Items.SelectMany(i => i.All)
            .SelectMany(i =>
                i switch
                {
                    TextItem t => [t.Ink],
                    PathItem p => new[] { p.Fill, p.Stroke }.OfType<Ink>(),
                    _ => Enumerable.Empty<Ink>(),
                }
            );
        Assert.Equal(Ink.SignalRed, Assert.Single(inks.Where(i => i.Red != i.Green || i.Green != i.Blue).Distinct()));
    }

    [Fact]
    public void Every_kind_has_a_shade_of_its_own_and_the_gravest_is_darkest()
    {
        double[] brightness =
        [
            .. Enum.GetValues<ConsequenceKind>().Select(k => SeverityBar.Draw(k, 0, 0, 20, 5).OfType<PathItem>().First().Fill!.Luminance),
        ];
        Assert.Equal(brightness.OrderDescending(), brightness);
        Assert.Equal(brightness.Length, brightness.Distinct().Count());
        Assert.Contains(SeverityBar.Draw(ConsequenceKind.BrokenLimit, 0, 0, 20, 5), i => i is ClipItem);
    }

    [Fact]
    public void Ticks_stand_in_the_middle_above_their_figures()
    {
        Scene plot = Plot("harbour-bowl", Varied.Load);
        double[] ticks =
        [
            .. plot.Items.OfType<PathItem>().Where(p => p.Path.EndsWith("L0 1.5", StringComparison.Ordinal)).Select(p => p.XMm),
        ];
        double[] figures = [.. Texts(plot).Where(t => double.TryParse(t.Shaped.Text, out _)).Select(t => t.XMm + (t.WidthMm / 2))];
        Assert.Equal(ticks.Length, figures.Length);
        Assert.All(ticks.Zip(figures), p => Assert.Equal(p.First, p.Second, 2));
    }
}

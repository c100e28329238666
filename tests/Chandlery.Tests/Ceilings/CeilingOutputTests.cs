using Chandlery.Core.Asked.Ceilings;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;
using Chandlery.Files;
using Chandlery.Paper.Papers.LoadPlots;
using Chandlery.Paper.Scenes;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Ceilings;

/// <summary>A load has one measure wherever it is printed beside others.</summary>
public sealed class CeilingOutputTests
{
    private static (Assessment A, Wax Wax) Bowl()
    {
        DeclarationFolder folder = DeclarationFolder.Open(
            Path.Combine(TestLaw.DemoFolder, "candles", "harbour-bowl.yaml"),
            TestLaw.Lawbook.Vocabulary
        );
        Assessment a = TestLaw.Demo("candles/harbour-bowl.yaml");
        return (a, folder.Catalogue.Find<Wax>(a.Candle.Wax, new Problems())!);
    }

    [Fact]
    public void Now_stands_in_the_measure_of_its_column()
    {
        (Assessment a, _) = Bowl();
        (int code, string output, _) = Command.Run("ceiling", Path.Combine(TestLaw.DemoFolder, "candles", "harbour-bowl.yaml"));
        string now = output.Split('\n').First(l => l.StartsWith("now:", StringComparison.Ordinal));
        string[] figures = now.Split(' ', StringSplitOptions.RemoveEmptyEntries)[1..5];
        Assert.Equal(0, code);
        Assert.Equal(
            [
                Figures.Plain(a.Composition.Recipe.MeltLoadOfWax.Value),
                Figures.Plain(a.Composition.Recipe.MeltLoadOfWax.Value),
                Figures.Plain(a.Composition.Recipe.MeltLoadOfCandle.Value),
                Figures.Plain(a.Composition.Recipe.Load.Value),
            ],
            figures
        );
    }

    [Fact]
    public void The_plots_axis_has_the_measure_of_its_figures()
    {
        (Assessment a, Wax wax) = Bowl();
        var finder = new CeilingFinder(a, wax, Varied.Load);
        Scene scene = CeilingPlot.Draw(a, Varied.Load, finder.Now, finder.Find());
        TextItem[] texts = [.. scene.All.OfType<TextItem>()];
        Assert.Contains(texts, t => t.Shaped.Text == "oil, % of the wax");
        string load = Figures.Plain(Math.Round(a.Composition.Recipe.MeltLoadOfWax.Value, 2)) + " %";
        TextItem now = texts.Single(t => t.Shaped.Text == $"now {load}");

        // The tick of the same figure stands where the mark of the present load stands.
        TextItem[] ticks = [.. texts.Where(t => double.TryParse(t.Shaped.Text, out _))];
        double perPercent =
            (ticks[^1].XMm - ticks[0].XMm) / double.Parse(ticks[^1].Shaped.Text, System.Globalization.CultureInfo.InvariantCulture);
        Assert.True(perPercent > 0);
        TextItem below = ticks.Last(t => t.XMm + 1.5 <= now.XMm - 1);
        TextItem above = ticks.First(t => t.XMm + 1.5 > now.XMm - 1);
        double figure = a.Composition.Recipe.MeltLoadOfWax.Value;
        Assert.InRange(
            figure,
            double.Parse(below.Shaped.Text, System.Globalization.CultureInfo.InvariantCulture),
            double.Parse(above.Shaped.Text, System.Globalization.CultureInfo.InvariantCulture)
        );
    }
}

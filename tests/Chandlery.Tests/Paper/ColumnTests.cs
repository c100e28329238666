using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers.Labels;
using Chandlery.Paper.Proofs;
using Chandlery.Paper.Scenes;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Paper;

/// <summary>Labels in columns: as large as their room allows, languages side by side.</summary>
public class ColumnTests
{
    private static LabelAttempt Make(Assessment a, double width, double height) =>
        TestLabels.Make(a, TestLabels.Ask(LabelForm.Rectangle, width, height));

    [Fact]
    public void ABandOfTwoLanguagesStandsInColumns()
    {
        Assessment a = TestLaw.Demo("candles/harbour-bowl.yaml");
        Assert.True(a.Languages.Count > 1);
        FittedLabel label = Make(a, 300, 88).Fitted!;
        Assert.True(label.Scene.All.OfType<TextItem>().Select(t => Math.Round(t.XMm)).Distinct().Count() >= 3);
    }

    [Theory]
    [InlineData(300, 88)]
    [InlineData(160, 105)]
    [InlineData(105, 148)]
    public void WhateverTheArrangementTheLawHolds(double width, double height)
    {
        Assessment a = TestLaw.Demo("candles/harbour-bowl.yaml");
        FittedLabel made = Assert.IsType<FittedLabel>(Make(a, width, height));
        IReadOnlyList<MeasuredPage> pages = MeasuredPage.ReadAll(PdfDrawing.Draw(new PaperDocument("t", "en", made.Pages)));
        Assert.All(
            LabelInspector.Inspect(pages, a, made.LeftOff.Select(l => l.Code.Text).ToHashSet()),
            c => Assert.True(c.Holds, $"{c.What}: {c.Measured}, {c.Required}")
        );
    }

    [Fact]
    public void AWideBandUsesItsWidth()
    {
        FittedLabel label = Make(TestLaw.Demo("candles/harbour-bowl.yaml"), 300, 88).Fitted!;
        double right = label.Scene.All.OfType<TextItem>().Max(t => t.XMm + t.WidthMm);
        Assert.True(right > 300 * 0.66, $"the text ends at {right} mm");
        Assert.True(label.XHeight.Value > label.Band.XHeight.Value * 1.2);
    }

    [Outside("CLP, Art. 31(1): readable horizontally when the package is set down normally, which its base is not")]
    [Fact]
    public void ALabelThatWarnsIsNeverOfferedOnTheBase()
    {
        Assessment tin = TestLaw.Demo("candles/fig-tin.yaml");
        Assert.True(tin.Label.Supplemental.Count > 0);
        IReadOnlyList<ArrangementResult> ways = LabelDocument.Arrange(tin, TestLaw.Shop, TestLaw.Lawbook.Burning, new Problems())!;
        Assert.DoesNotContain(ways, w => w.Attempt.Shape.Where.Contains("base", StringComparison.Ordinal));

        Assessment jar = TestLaw.Demo("candles/slate-jar.yaml");
        Assert.Equal(0, jar.Label.Hazard.Count + jar.Label.Supplemental.Count);
        Assert.Contains(
            LabelDocument.Arrange(jar, TestLaw.Shop, TestLaw.Lawbook.Burning, new Problems())!,
            w => w.Attempt.Shape.Where.Contains("base", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void ALabelOfTheUnitedStatesMeasuresAsItMust()
    {
        Assessment a = TestLaw.DemoEdited(
            "candles/slate-jar.yaml",
            "US",
            text => text.Replace("soldIn: [IE, DE]", "soldIn: [US]", StringComparison.Ordinal)
        );
        var problems = new Problems();
        FittedLabel made = Assert.IsType<FittedLabel>(LabelDocument.Make(a, TestLaw.Shop, TestLaw.Lawbook.Burning, problems));
        IReadOnlyList<MeasuredPage> pages = MeasuredPage.ReadAll(PdfDrawing.Draw(new PaperDocument("t", "en", made.Pages)));
        Assert.All(
            LabelInspector.Inspect(pages, a, new HashSet<string>()),
            c => Assert.True(c.Holds, $"{c.What}: {c.Measured}, {c.Required}")
        );
    }
}

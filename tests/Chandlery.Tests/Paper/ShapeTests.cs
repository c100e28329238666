using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Judged;
using Chandlery.Core.Quantities;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Papers.Labels;
using Chandlery.Paper.Proofs;
using Chandlery.Paper.Scenes;
using Chandlery.Paper.Shapes;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Paper;

public class ShapeTests
{
    [Theory]
    [InlineData("fig-tin", LabelForm.Circle, 62, 62, 0, 0)]
    [InlineData("fig-tin", LabelForm.Ring, 80, 80, 0, 16)]
    [InlineData("fig-tin", LabelForm.Rectangle, 60, 80, 12, 0)]
    [InlineData("slate-jar", LabelForm.Circle, 90, 90, 0, 0)]
    [InlineData("slate-jar", LabelForm.Band, 1, 60, 0, 0)]
    [InlineData("harbour-bowl", LabelForm.Circle, 190, 190, 0, 0)]
    [InlineData("harbour-bowl", LabelForm.Rectangle, 130, 110, 20, 0)]
    public void TextStaysInsideTheOutline(string candle, LabelForm form, double width, double height, double corner, double hole)
    {
        FittedLabel label = TestLabels
            .Make(TestLaw.Demo($"candles/{candle}.yaml"), TestLabels.Ask(form, width, height, corner, hole))
            .Fitted!;
        double w = label.Shape.WidthMm;
        double h = label.Shape.HeightMm;
        Assert.All(
            label.Scene.All.OfType<TextItem>(),
            t =>
            {
                foreach (
                    (double x, double y) in new[]
                    {
                        (t.XMm, t.BaselineMm),
                        (t.XMm + t.WidthMm, t.BaselineMm),
                        (t.XMm, t.BaselineMm - (t.SizeMm * 0.7)),
                        (t.XMm + t.WidthMm, t.BaselineMm - (t.SizeMm * 0.7)),
                    }
                )
                {
                    Assert.InRange(x, 0, w);
                    Assert.InRange(y, 0, h);
                    if (form is LabelForm.Circle or LabelForm.Ring)
                    {
                        double distance = Math.Sqrt(Math.Pow(x - (w / 2), 2) + Math.Pow(y - (w / 2), 2));
                        Assert.InRange(distance, hole / 2, w / 2);
                    }
                }
            }
        );
        Assert.True(label.XHeight.Value >= 1.2);
    }

    [Fact]
    public void ABandIsAsLongAsTheVesselIsRound()
    {
        FittedLabel label = TestLabels.Make(TestLaw.Demo("candles/slate-jar.yaml"), TestLabels.Ask(LabelForm.Band, 1, 60)).Fitted!;
        Assert.Equal((Math.PI * 80) + 5, label.Shape.WidthMm, 6);
    }

    [Outside("CLP Annex I, 1.2.1.6 (ECHA example): front of a fold-out label")]
    [Fact]
    public void ALeafletHasAFrontWithWhatMustBeSeen()
    {
        Assessment a = TestLaw.Demo("candles/harbour-bowl.yaml");
        FittedLabel label = TestLabels.Make(a, TestLabels.Ask(LabelForm.Leaflet, 120, 100)).Fitted!;
        Assert.Equal(2, label.Pages.Count);
        IReadOnlyList<MeasuredPage> pages = MeasuredPage.ReadAll(PdfDrawing.Draw(new PaperDocument("t", "en", label.Pages)));
        foreach (
            string needed in new[]
            {
                "Harbour Bowl",
                "Warning",
                "Achtung",
                "2900 g",
                "Tarnvey Candle Shed",
                a.Maker.Telephone,
                a.Ufi!,
                "EN More inside",
                "DE Mehr im Innern",
            }
        )
        {
            Assert.Contains(needed, pages[0].Text, StringComparison.Ordinal);
        }

        Assert.Single(pages[0].RedSquareSidesMm);
        Assert.DoesNotContain("Keep out of reach of children", pages[0].Text, StringComparison.Ordinal);
        Assert.Contains("Keep out of reach of children", pages[1].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void TheSmallestLawfulArrangementIsChosen()
    {
        Assessment tin = TestLaw.Demo("candles/fig-tin.yaml");
        var problems = new Problems();
        IReadOnlyList<ArrangementResult> all = LabelDocument.Arrange(tin, TestLaw.Shop, TestLaw.Lawbook.Burning, problems)!;
        FittedLabel chosen = TestLabels.Make(tin, null).Fitted!;
        Assert.Equal(all.First(r => r.Attempt is FittedLabel).Attempt.Shape, chosen.Shape);
        Assert.Equal(LabelForm.Band, chosen.Shape.Request.Form);
        Assert.Contains(chosen.Notes, n => n.Contains("if possible", StringComparison.Ordinal));
        Assert.Contains(all, r => r.Attempt.Shape.Request.Form == LabelForm.Band);
        Assert.Contains(all, r => r.Attempt.Shape.Request.Form == LabelForm.Leaflet && r.HoldsLegalSize);
    }

    [Theory]
    [InlineData(90, false)]
    [InlineData(91, true)]
    public void ACircleHoldsTheLawsSizeWhenTheRectangleLiesInside(double diameter, bool holds) =>
        Assert.Equal(
            holds,
            new LabelShape(TestLabels.Ask(LabelForm.Circle, diameter, diameter), "").Holds(
                new LabelSize(new Millimetres(52), new Millimetres(74))
            )
        );

    [Fact]
    public void SmallPackageReliefIsUsedOnlyWhereTheTextWouldNotFit()
    {
        Assessment tin = TestLaw.Demo("candles/fig-tin.yaml");
        Verdict verdict = TestLaw.Judge(
            TestLaw.Line("Acid ester", 30, ["Skin Irrit. 2, H315", "Eye Irrit. 2, H319", "Aquatic Chronic 2, H411"]),
            TestLaw.Line("Resin", 5, ["Skin Sens. 1B, H317"])
        );
        Assessment a = tin with { Verdict = verdict, Contents = new Millilitres(115) };
        Assert.Empty(TestLabels.Make(a, TestLabels.Ask(LabelForm.Rectangle, 105, 148)).Fitted!.LeftOff);
        Assert.Null(TestLabels.Make(a with { Contents = new Millilitres(1000) }, TestLabels.Ask(LabelForm.Rectangle, 68, 60)).Fitted);
        FittedLabel relieved = Assert.IsType<FittedLabel>(TestLabels.Make(a, TestLabels.Ask(LabelForm.Rectangle, 68, 60)));
        Assert.Contains(relieved.LeftOff, l => l.Code == "H315");
        string text = MeasuredPage.ReadAll(PdfDrawing.Draw(new PaperDocument("t", "en", relieved.Pages)))[0].Text;
        Assert.DoesNotContain("Causes skin irritation", text, StringComparison.Ordinal);
        Assert.Contains("May cause an allergic skin reaction", text, StringComparison.Ordinal);
    }

    // Each language's letters come back from the PDF, Greek and Cyrillic-free Central European ones included.
    [Theory]
    [InlineData("AT")]
    [InlineData("BE")]
    [InlineData("CY")]
    [InlineData("CZ")]
    [InlineData("DK")]
    [InlineData("ES")]
    [InlineData("FI")]
    [InlineData("FR")]
    [InlineData("GR")]
    [InlineData("IE")]
    [InlineData("IT")]
    [InlineData("LU")]
    [InlineData("NL")]
    [InlineData("PL")]
    [InlineData("PT")]
    [InlineData("SE")]
    public void EveryLegalDimensionAndTextHoldsInEachPlacesLanguages(string place)
    {
        foreach (string day in new[] { "2026-11-25", "2028-01-01" })
        {
            Assessment a = TestLaw.Demo(
                "candles/harbour-bowl.yaml",
                place,
                DateOnly.Parse(day, System.Globalization.CultureInfo.InvariantCulture)
            );
            LabelAttempt result = TestLabels.Make(a with { Vessel = a.Vessel with { Outer = null } }, null);
            byte[] pdf = PdfDrawing.Draw(new PaperDocument("t", a.Languages[0].Code, result.Fitted!.Pages));
            Assert.All(
                LabelInspector.Inspect(MeasuredPage.ReadAll(pdf), a, new HashSet<string>()),
                i => Assert.True(i.Holds, $"{place} {day}: {i}")
            );
        }
    }

    [Fact]
    public void ALanguageWithoutTextsIsAnErrorNeverEnglish()
    {
        var problems = new Problems();
        Chandlery.Files.DeclarationFolder folder = Chandlery.Files.DeclarationFolder.Open(
            Path.Combine(TestLaw.DemoFolder, "candles", "fig-tin.yaml"),
            TestLaw.Lawbook.Vocabulary
        );
        Assert.Empty(new Assessor(TestLaw.Lawbook, folder.Catalogue, TestLaw.Today).Assess(folder.Asked[0], "IS", problems));
        Assert.Contains("no texts in the language 'is'", problems.Found[0].What, StringComparison.Ordinal);
    }

    [Fact]
    public void TheInspectorSeesWhatIsWrong()
    {
        Assessment a = TestLaw.Demo("candles/harbour-bowl.yaml");
        FittedLabel good = TestLabels.Make(a, TestLabels.Ask(LabelForm.Rectangle, 120, 105)).Fitted!;
        Scene shrunk = good.Scene with
        {
            WidthMm = 60,
            HeightMm = 52,
            Items =
            [
                .. good
                    .Scene.All.Where(i => i is not TaggedItem)
                    .Select(i =>
                        i switch
                        {
                            TextItem t => t with { XMm = t.XMm / 2, BaselineMm = t.BaselineMm / 2, SizeMm = t.SizeMm / 2 },
                            PathItem p => p with { XMm = p.XMm / 2, YMm = p.YMm / 2, ScaleMm = p.ScaleMm / 2 },
                            _ => i,
                        }
                    ),
            ],
        };
        IReadOnlyList<Inspection> checks = LabelInspector.Inspect(
            MeasuredPage.ReadAll(PdfDrawing.Draw(new PaperDocument("t", "en", [shrunk]))),
            a,
            new HashSet<string>()
        );
        string[] failed = [.. checks.Where(c => !c.Holds).Select(c => c.What)];
        Assert.Contains("label size", failed);
        Assert.Contains("smallest lower-case x", failed);
        Assert.Contains("smallest pictogram, side of its square", failed);
        Assert.Contains("figures of the quantity", failed);

        Scene cut = good.Scene with
        {
            Items =
            [
                .. good.Scene.All.Where(i =>
                    i is not TaggedItem
                    && (i is not TextItem { Shaped.Text: var text } || !text.Contains("allergic", StringComparison.Ordinal))
                ),
            ],
        };
        IReadOnlyList<Inspection> missing = LabelInspector.Inspect(
            MeasuredPage.ReadAll(PdfDrawing.Draw(new PaperDocument("t", "en", [cut]))),
            a,
            new HashSet<string>()
        );
        Assert.Contains(missing, c => !c.Holds && c.Measured.Contains("H317", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("3x4 -> d-Limonene", "Ελληνικά Žluťoučký kůň Śliwka ≥ ½")]
    public void WhatIsSetReadsBack(string first, string second)
    {
        Scene scene = new(120, 30, [Line(first, 8), Line(second, 16)], []);
        MeasuredPage page = MeasuredPage.ReadAll(PdfDrawing.Draw(new PaperDocument("t", "en", [scene])))[0];
        Assert.Equal(first, page.Lines[0].Text);
        Assert.Equal(second, page.Lines[1].Text);
    }

    private static TextItem Line(string text, double baseline) =>
        new(Face.Of(Weight.Regular).Shape(text), Face.Of(Weight.Regular), 3, baseline, 3, Ink.Black);
}

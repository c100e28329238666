using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Files;
using Chandlery.Paper.Designs;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.Labels;
using Chandlery.Paper.Pdf;
using Chandlery.Paper.Proofs;
using Chandlery.Paper.Scenes;
using Chandlery.Paper.Shapes;
using Chandlery.Paper.Templates;
using Chandlery.Tests.Support;
using Chandlery.Yaml;
using SkiaSharp;

namespace Chandlery.Tests.Paper;

/// <summary>Fronts: every design on every piece, with the law beside it untouched.</summary>
public class DesignTests
{
    private static readonly string[] Candles = ["candles/harbour-bowl.yaml", "candles/slate-jar.yaml", "candles/fig-tin.yaml"];

    public static TheoryData<string, string> DesignsAndCandles
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (string design in TestLaw.Shop.Designs.Names)
            {
                foreach (string candle in Candles)
                {
                    data.Add(design, candle);
                }
            }

            return data;
        }
    }

    public static TheoryData<string> Designs => [.. TestLaw.Shop.Designs.Names];

    [Fact]
    public void ThereAreEightDesignsAtLeastAndEachSaysWhatItIs()
    {
        Assert.True(TestLaw.Shop.Designs.Names.Count >= 8);
        Assert.All(TestLaw.Shop.Designs.Names, name => Assert.NotEmpty(TestLaw.Shop.Designs.About(name)));
    }

    [Theory]
    [MemberData(nameof(DesignsAndCandles))]
    public void EveryPieceIsDrawnInColourAndInOneInk(string design, string candle)
    {
        Assessment a = TestLaw.Demo(candle, "IE");
        foreach (bool oneInk in new[] { false, true })
        {
            PaperRequest request = Request(a, Brand(oneInk: oneInk));
            foreach (string piece in DesignPieces.Words)
            {
                var problems = new Problems();
                PaperDocument? document = DesignPieces.Draw(request, design, piece, problems);
                Assert.Empty(problems.Found);
                Assert.NotNull(document);
                Assert.All(document.Pages, page => Assert.NotEmpty(page.All));
                Assert.All(document.Pages, page => Assert.Equal(DesignedLabel.BleedMm, page.BleedMm));
            }
        }
    }

    [Outside("CLP, Art. 31 and 32, and Annex I, 1.2.1: the label's sizes, colours, texts and their order, measured on the printed PDF")]
    [Theory]
    [MemberData(nameof(DesignsAndCandles))]
    public void TheLegalPanelHoldsWhateverTheDesign(string design, string candle)
    {
        Assessment a = TestLaw.Demo(candle, "IE");
        foreach (DesignForm form in Enum.GetValues<DesignForm>())
        {
            var problems = new Problems();
            MadeLabel? made = DesignedLabel.Make(Request(a, Brand()), design, form, problems);
            Assert.Empty(problems.Found);
            Assert.NotNull(made);
            Assert.All(Inspect(made, a), check => Assert.True(check.Holds, $"{form}: {check.What}: {check.Measured}, {check.Required}"));
        }
    }

    [Theory]
    [InlineData("<fill x=\"-50\" y=\"-50\" w=\"900\" h=\"900\" ink=\"#FF0000\"/>")]
    [InlineData(
        "<text x=\"60\" w=\"300\" y=\"30\" size=\"20\" weight=\"bold\" ink=\"black\">over the law over the law over the law</text>"
    )]
    [InlineData("<circle cx=\"90\" cy=\"30\" r=\"40\" ink=\"#00FF00\"/>")]
    [InlineData("<ornament kind=\"two-fields\" x=\"-100\" y=\"-100\" w=\"800\" h=\"800\"/>")]
    [InlineData("<line x1=\"0\" y1=\"20\" x2=\"400\" y2=\"20\" width=\"30\" ink=\"black\"/>")]
    public void NoDesignCanReachIntoTheLegalPanel(string hostile)
    {
        Assessment a = TestLaw.Demo("candles/harbour-bowl.yaml", "IE");
        var texts = ShippedFiles.Templates(null, new Problems()).ToDictionary();
        texts["designs/hostile/front.sbn"] = $"{{{{- # Hostile. -}}}}\n<design ground=\"#0000FF\">{hostile}</design>";
        PaperRequest request = Request(a, Brand()) with { Shop = new PaperShop(new TemplateShelf(texts), TestLaw.Shop.Symbols) };
        var problems = new Problems();
        MadeLabel made = DesignedLabel.Make(request, "hostile", DesignForm.One, problems)!;
        Assert.Empty(problems.Found);
        Assert.All(Inspect(made, a), check => Assert.True(check.Holds, $"{check.What}: {check.Measured}, {check.Required}"));

        // Dot by dot: the panel is the one that a harmless design has.
        MadeLabel harmless = DesignedLabel.Make(Request(a, Brand()), "ledger", DesignForm.One, problems)!;
        Assert.Equal(PanelDots(harmless), PanelDots(made));
    }

    [Theory]
    [InlineData("ledger")]
    [InlineData("leafwork")]
    [InlineData("tideline")]
    [InlineData("seal")]
    public void APairCutAsAnArchKeepsTheWordsOfItsFrontFromTheCut(string design)
    {
        Assessment whole = TestLaw.Demo("candles/harbour-bowl.yaml", "IE");
        Assessment a = whole with { Candle = whole.Candle with { Label = TestLabels.Ask(LabelForm.Arch, 120, 170) } };
        var problems = new Problems();
        MadeLabel made = DesignedLabel.Make(Request(a, Brand()), design, DesignForm.Pair, problems)!;
        Assert.Empty(problems.Found);
        Assert.Equal(2, made.Document.Pages.Count);
        Assert.All(Inspect(made, a), check => Assert.True(check.Holds, $"{check.What}: {check.Measured}, {check.Required}"));
        using SKPath cut = SKPath.ParseSvgPathData(made.Document.Pages[0].CutPath!);
        Assert.Equal(made.Document.Pages[0].CutPath, made.Document.Pages[1].CutPath);
        Assert.Equal(DesignedLabel.BleedMm, made.Document.Pages[0].BleedMm);
        List<TextItem> words = [.. made.Document.Pages[0].All.OfType<TextItem>().Where(t => t.AngleDegrees == 0)];
        Assert.NotEmpty(words);
        Assert.All(
            words,
            t =>
            {
                foreach (double x in new[] { t.XMm - 1.5, t.XMm + t.WidthMm + 1.5 })
                {
                    Assert.True(cut.Contains((float)x, (float)(t.BaselineMm - (t.SizeMm * 0.7))), t.Shaped.Text);
                    Assert.True(cut.Contains((float)x, (float)t.BaselineMm), t.Shaped.Text);
                }
            }
        );
    }

    [Theory]
    [InlineData("two-fields")]
    [InlineData("strata")]
    [InlineData("tideline")]
    [InlineData("lamp")]
    public void ThePictureOfAFrontGoesOnAllOverALabelUnderASteepRoof(string design)
    {
        const double besideMm = 0.4;
        Assessment whole = TestLaw.Demo("candles/slate-jar.yaml", "IE");
        LabelRequest roof = CutLineTests.Roof;
        Assessment a = whole with { Candle = whole.Candle with { Label = roof } };
        Scene front = DesignedLabel.Make(Request(a, Brand()), design, DesignForm.Pair, new Problems())!.Document.Pages[0];
        (double x, double y, double width, double height) = new LabelShape(roof, "").LargestBox();
        using SKBitmap dots = SKBitmap.Decode(PngDrawing.Draw(front with { CutPath = null }, 127));
        double perMm = dots.Width / front.WidthMm;
        SKColor At(double xMm, double yMm) => dots.GetPixel((int)(xMm * perMm), (int)(yMm * perMm));

        // Where the words' room ends nothing of the picture may.
        int torn = 0;
        for (double down = y + 1; down < y + height - 1; down += 0.5)
        {
            torn += Differs(At(x - besideMm, down), At(x + besideMm, down)) ? 1 : 0;
        }

        for (double right = x + 1; right < x + width - 1; right += 0.5)
        {
            torn += Differs(At(right, y - besideMm), At(right, y + besideMm)) ? 1 : 0;
        }

        // Waves of a line may differ on both sides by chance; an edge of the room differs along its whole length.
        Assert.InRange(torn, 0, (int)((width + height) * 2 / 8));

        static bool Differs(SKColor one, SKColor other) =>
            Math.Abs(one.Red - other.Red) + Math.Abs(one.Green - other.Green) + Math.Abs(one.Blue - other.Blue) > 24;
    }

    [Outside("CLP, Art. 31 and 32, and Annex I, 1.2.1: the label's sizes, colours, texts and their order, measured on the printed PDF")]
    [Theory]
    [MemberData(nameof(DesignsAndCandles))]
    public void FrontAndLawShareAnArchAndAnOutline(string design, string candle)
    {
        Assessment whole = TestLaw.Demo(candle, "IE");
        foreach (LabelRequest asked in new[] { TestLabels.Ask(LabelForm.Arch, 120, 190), CutLineTests.Tag })
        {
            Assessment a = whole with { Candle = whole.Candle with { Label = asked } };
            var problems = new Problems();
            MadeLabel? made = DesignedLabel.Make(Request(a, Brand()), design, DesignForm.One, problems);
            Assert.Empty(problems.Found);
            Assert.NotNull(made);
            Scene page = Assert.Single(made.Document.Pages);
            Assert.NotNull(made.Panel);
            Assert.All(LabelInspector.Inspect(made, a), c => Assert.True(c.Holds, $"{asked}: {c.What}: {c.Measured}, {c.Required}"));

            // Words of the front, read back from the PDF, against the line along which it is cut.
            CutLine cut = CutLine.Of(page.CutPath!);
            MeasuredPage printed = MeasuredPage.ReadAll(made.Pdf()).Single();
            List<MeasuredLine> words = [.. printed.Lines.Where(l => l.IsLevel && l.BaselineMm < made.Panel.Value.Y)];
            Assert.NotEmpty(words);
            Assert.All(
                words.SelectMany(l => l.Letters.Select(b => (l.Text, Nearest: cut.DistanceOf((b.X, b.Y, b.Right, b.Bottom))))),
                w => Assert.True(w.Nearest > 1, $"{asked}: '{w.Text}' stands {w.Nearest:0.00} mm from the cut")
            );
        }
    }

    [Fact]
    public void NothingOfTheRecipeCanBeReadOffAFrontUnlessTheMakerSaysSo()
    {
        Assessment one = TestLaw.Demo("candles/harbour-bowl.yaml", "IE");
        Assessment other = TestLaw.DemoEdited(
            "candles/harbour-bowl.yaml",
            "IE",
            text =>
                text.Replace("sweet-orange, share: 30", "sweet-orange, share: 40", StringComparison.Ordinal)
                    .Replace("cedar-smoke, share: 25", "cedar-smoke, share: 15", StringComparison.Ordinal)
                    .Replace("percent: 8", "percent: 6", StringComparison.Ordinal)
        );
        foreach (string design in TestLaw.Shop.Designs.Names)
        {
            Assert.Equal(Front(one, design, shows: false), Front(other, design, shows: false));
        }

        Assert.NotEqual(Front(one, "strata", shows: true), Front(other, "strata", shows: true));
    }

    [Theory]
    [MemberData(nameof(Designs))]
    public void NamesOfAnyLengthStayOnTheFront(string design)
    {
        foreach (string name in new[] { "Ilex", "Last Boat Home from the Old Stone Harbour", "Nightwatchmanship" })
        {
            Assessment a = TestLaw.DemoEdited(
                "candles/harbour-bowl.yaml",
                "IE",
                text => text.Replace("Harbour Bowl", name, StringComparison.Ordinal)
            );
            var problems = new Problems();
            Scene front = DesignPieces.Draw(Request(a, Brand()), design, "front", problems)!.Pages[0];
            Assert.All(
                front.All.OfType<TextItem>().Where(t => t.AngleDegrees == 0),
                t =>
                {
                    Assert.True(t.XMm >= -0.5, $"{name}: '{t.Shaped.Text}' begins at {t.XMm}");
                    Assert.True(t.XMm + t.WidthMm <= front.WidthMm + 0.5, $"{name}: '{t.Shaped.Text}' ends at {t.XMm + t.WidthMm}");
                    Assert.InRange(t.BaselineMm, 0, front.HeightMm);
                }
            );
        }
    }

    [Fact]
    public void FiguresOfAFrontAreThoseOfItsLanguage()
    {
        Assessment a = TestLaw.DemoEdited("candles/harbour-bowl.yaml", "DE", text => text + "languages: [de]\n");
        string[] texts =
        [
            .. DesignPieces
                .Draw(Request(a, Brand(shows: true)), "ledger", "front", new Problems())!
                .Pages[0]
                .All.OfType<TextItem>()
                .Select(t => t.Shaped.Text),
        ];
        Assert.Contains("2900,0", texts);
        Assert.DoesNotContain(texts, t => t.Contains('.', StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(DesignsAndCandles))]
    public void TheMakersNameIsWholeOnEveryFront(string design, string candle)
    {
        Assessment a = TestLaw.Demo(candle, "IE");
        foreach (string piece in new[] { "one", "front" })
        {
            IEnumerable<string> texts = DesignPieces
                .Draw(Request(a, Brand(shows: true)), design, piece, new Problems())!
                .Pages.SelectMany(p => p.All)
                .OfType<TextItem>()
                .Select(t => t.Shaped.Text);
            Assert.DoesNotContain("Tarnvey Candle", texts);
        }
    }

    [Theory]
    [InlineData("harbour fog, cedar smoke, fig leaf", "harbour fog, cedar smoke")]
    [InlineData("sweet orange essential oil", "sweet orange essential")]
    public void AListLosesAWholeThingWhereItIsTooLong(string text, string left)
    {
        Face face = Face.Of(Weight.Regular);
        double whole = FittingText.Whole(text, face, 1.9, double.PositiveInfinity).SizeMm * face.Shape(text).Advance / face.UnitsPerEm;
        Assert.Equal(text, FittingText.Of(text, face, 2.25, whole + 0.1).Text);
        Assert.Equal(left, FittingText.Of(text, face, 2.25, whole - 0.5).Text);
    }

    [Theory]
    [MemberData(nameof(Designs))]
    public void NoTextOfAFrontWithoutWicksEndsInASeparator(string design)
    {
        Assessment a = TestLaw.Demo("candles/fig-melts.yaml", "IE");
        foreach (string piece in DesignPieces.Words.Except(["one", "pair", "wrap"]))
        {
            IEnumerable<string> texts = DesignPieces
                .Draw(Request(a, Brand(shows: true)), design, piece, new Problems())!
                .Pages.SelectMany(p => p.All)
                .OfType<TextItem>()
                .Select(t => t.Shaped.Text.TrimEnd());
            Assert.DoesNotContain(texts, t => t.EndsWith(',') || t.EndsWith('·'));
        }
    }

    [Theory]
    [InlineData("candles/breakwater-pillar.yaml")]
    [InlineData("candles/dune-refill.yaml")]
    [InlineData("candles/harbour-bowl.yaml")]
    public void TheNameStandsClearOfTheSeal(string candle)
    {
        const double gapMm = 0.5;
        Assessment a = TestLaw.Demo(candle, "IE");
        Scene front = DesignPieces.Draw(Request(a, Brand(shows: true)), "seal", "front", new Problems())!.Pages[0];
        double seal = front
            .All.OfType<PathItem>()
            .Select(p => ItemBounds.Of([p])!)
            .Where(b => b.RightMm - b.LeftMm < front.WidthMm)
            .Max(b => b.BottomMm);
        string[] words = a.Candle.Name.Split(' ');
        TextItem[] name = [.. front.All.OfType<TextItem>().Where(t => t.AngleDegrees == 0 && t.Shaped.Text.Split(' ').All(words.Contains))];
        Assert.NotEmpty(name);
        Assert.All(name, t => Assert.InRange(t.BaselineMm - (t.SizeMm * 0.73), seal + gapMm, front.HeightMm));
    }

    [Theory]
    [InlineData("candles/fig-melts.yaml")]
    [InlineData("candles/quay-tea-lights.yaml")]
    [InlineData("candles/harbour-bowl.yaml")]
    public void AVesselOfAnyOutlineStaysInItsRoomOnAStrip(string candle)
    {
        Assessment a = TestLaw.Demo(candle, "IE");
        Scene strip = DesignPieces.Draw(Request(a, Brand(shows: true)), "wick-plan", "strip", new Problems())!.Pages[0];
        ItemBounds wall = ItemBounds.Of([.. strip.All.OfType<PathItem>().Where(p => p.Stroke is not null)])!;
        Assert.InRange(wall.LeftMm, 0, strip.WidthMm);
        Assert.InRange(wall.BottomMm, 0, strip.HeightMm);
        Assert.All(strip.All.OfType<TextItem>(), t => Assert.InRange(t.XMm, wall.RightMm, strip.WidthMm));
    }

    [Theory]
    [MemberData(nameof(DesignsAndCandles))]
    public void TheCandlesNameCanBeReadOnEveryFrontAndNothingStandsOnIt(string design, string candle)
    {
        const double smallestNameMm = 3.2;
        Assessment a = TestLaw.Demo(candle, "IE");
        string[] words = a.Candle.Name.ToLowerInvariant().Split(' ');
        foreach (string piece in new[] { "one", "front", "strip" })
        {
            PaperDocument document = DesignPieces.Draw(Request(a, Brand(shows: true)), design, piece, new Problems())!;
            double art = piece == "one" ? FrontWidth(document.Pages[0]) : document.Pages[0].WidthMm;
            TextItem[] texts = [.. document.Pages[0].All.OfType<TextItem>().Where(t => t.AngleDegrees == 0 && t.XMm < art)];
            TextItem[] name =
            [
                .. texts.Where(t => t.Shaped.Text.ToLowerInvariant().Split(' ').All(words.Contains) && t.SizeMm >= smallestNameMm),
            ];
            Assert.NotEmpty(name);
            foreach (TextItem other in texts.Except(name))
            {
                Assert.DoesNotContain(name, n => Overlap(n, other));
            }
        }
    }

    // The panel's white field begins where the front ends.
    private static double FrontWidth(Scene page) =>
        MeasuredPage.ReadAll(PdfDrawing.Draw(new PaperDocument("t", "en", [page])))[0].Panel!.Value.X;

    private static bool Overlap(TextItem one, TextItem other) =>
        one.XMm < other.XMm + other.WidthMm
        && other.XMm < one.XMm + one.WidthMm
        && one.BaselineMm - (one.SizeMm * 0.7) < Foot(other)
        && other.BaselineMm - (other.SizeMm * 0.7) < Foot(one);

    private static double Foot(TextItem text) =>
        text.BaselineMm + (text.Shaped.Text.IndexOfAny(['g', 'j', 'p', 'q', 'y']) < 0 ? 0 : text.SizeMm * text.Face.Descent);

    private static byte[] Front(Assessment a, string design, bool shows) =>
        PngDrawing.Draw(DesignPieces.Draw(Request(a, Brand(shows: shows)), design, "front", new Problems())!.Pages[0], 72);

    private static byte[] PanelDots(MadeLabel label)
    {
        Box panel = label.Panel!.Value;
        Scene page = label.Document.Pages[^1];
        var cut = new Scene(panel.Width, panel.Height, [.. page.Items.Select(i => i.Moved(-panel.X, -panel.Y))], []);
        return PngDrawing.Draw(cut, 150);
    }

    private static IReadOnlyList<Inspection> Inspect(MadeLabel label, Assessment a) => LabelInspector.Inspect(label, a);

    private static BrandKit Brand(bool shows = false, bool oneInk = false)
    {
        var problems = new Problems();
        string text = $"declares: brand\nshowsShares: {(shows ? "yes" : "no")}\noneInk: {(oneInk ? "yes" : "no")}\n";
        var brand = (Brand)
            new Chandlery.Core.Declared.Reading.DeclarationReader(TestLaw.Lawbook.Vocabulary).Read(text, "brand.yaml", "brand", problems)!;
        Assert.Empty(problems.Found);
        return new BrandKit(brand, null, null);
    }

    private static PaperRequest Request(Assessment a, BrandKit kit) =>
        new(a, a.Languages[0], TestLaw.WaxOf(a), TestLaw.Lawbook, TestLaw.Shop, new PaperSettings())
        {
            Catalogue = DeclarationFolder.Open(TestLaw.DemoFolder, TestLaw.Lawbook.Vocabulary).Catalogue,
            Brand = kit,
        };
}

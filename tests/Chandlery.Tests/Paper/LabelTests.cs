using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers.Labels;
using Chandlery.Paper.Scenes;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Paper;

public class LabelTests
{
    private static LabelAttempt Make(Assessment a)
    {
        var problems = new Problems();
        LabelAttempt? result = LabelDocument.Make(a, TestLaw.Shop, TestLaw.Lawbook.Burning, problems);
        Assert.Empty(problems.Found);
        return result!;
    }

    private static PdfReader Print(Assessment a, out FittedLabel label)
    {
        label = Make(a).Fitted!;
        return new PdfReader(PdfDrawing.Draw(new PaperDocument("t", "en", [label.Scene])));
    }

    private static LabelRequest Rectangle(double width, double height) =>
        new(LabelForm.Rectangle, new LabelSize(new Millimetres(width), new Millimetres(height)), new Millimetres(0), new Millimetres(0));

    private static Assessment WithVessel(Assessment a, double millilitres) =>
        a with
        {
            Vessel = a.Vessel with { Brimful = new Millilitres(millilitres), Outer = null },
        };

    // Table 1.3: capacity, label, pictogram. 3.00 L still belongs to the first row ("not exceeding").
    [Outside("CLP Annex I, 1.2.1.4, Table 1.3 (consolidated text of 1 September 2025), measured in the printed PDF")]
    [Theory]
    [InlineData(115, 52, 74, 16)]
    [InlineData(3000, 52, 74, 16)]
    [InlineData(3010, 74, 105, 23)]
    [InlineData(50_000, 74, 105, 23)]
    [InlineData(50_010, 105, 148, 32)]
    [InlineData(500_000, 105, 148, 32)]
    [InlineData(500_010, 148, 210, 46)]
    public void LabelAndPictogramAreAtLeastAsLargeAsTheTableAsks(double millilitres, double shorter, double longer, double pictogram)
    {
        using PdfReader pdf = Print(WithVessel(TestLaw.Demo("candles/harbour-bowl.yaml", "IE"), millilitres), out _);
        (double width, double height) = pdf.SizeMm();
        Assert.True(Math.Min(width, height) >= shorter - 0.01);
        Assert.True(Math.Max(width, height) >= longer - 0.01);

        // The law's figure is the side of the square; tip to tip is the square's diagonal.
        (double picture, double tall) = pdf.RedPathsMm().Single();
        Assert.InRange(picture, (pictogram * Math.Sqrt(2)) - 0.05, width / 2);
        Assert.Equal(picture, tall, 2);
    }

    [Outside("CLP Annex I, 1.2.1.3: a pictogram covers at least one fifteenth of the minimum label area and 1 cm2")]
    [Fact]
    public void EveryBandOfTheTableMeetsTheFifteenth() =>
        Assert.All(
            TestLaw.Eu.Formats.Formats.SelectMany(f => f.Bands),
            b =>
            {
                double side = b.PictogramIfPossible.Value;
                Assert.True(side * side >= 100);

                // The law lists whole millimetres (16 for 52 x 74 mm, whose fifteenth is 16.02 mm square): compare as listed.
                Assert.True(side >= Math.Floor(Math.Sqrt(b.Label.Width.Value * b.Label.Height.Value / 15)));
            }
        );

    [Outside("BAuA, example label: lower-case x of 1.2 mm; Regulation (EU) 2024/2865, Annex I, 1.2.1.5, Table 1.3 from 2028")]
    [Theory]
    [InlineData("2026-11-25", 115, 1.2)]
    [InlineData("2026-11-25", 4200, 1.2)]
    [InlineData("2028-01-01", 500, 1.2)]
    [InlineData("2028-01-01", 510, 1.4)]
    [InlineData("2028-01-01", 3000, 1.4)]
    [InlineData("2028-01-01", 4200, 1.8)]
    [InlineData("2028-01-01", 60_000, 2.0)]
    public void LettersAreAtLeastAsTallAsAsked(string asOf, double millilitres, double least)
    {
        Assessment a = WithVessel(
            TestLaw.Demo("candles/harbour-bowl.yaml", "IE", DateOnly.Parse(asOf, System.Globalization.CultureInfo.InvariantCulture)),
            millilitres
        );
        using PdfReader pdf = Print(a, out FittedLabel label);
        double[] heights = [.. pdf.XHeightsMm()];
        Assert.NotEmpty(heights);
        Assert.All(heights, h => Assert.True(h >= least - 0.005, $"{h} < {least}"));
        Assert.Equal(label.XHeight.Value, heights.Min(), 2);
    }

    [Outside("Regulation (EU) 2024/2865, Annex I, 1.2.1.5: lines at least 120 % of the font size apart")]
    [Fact]
    public void LinesAreAtLeastOneFifthOfTheTypeSizeApart()
    {
        using PdfReader pdf = Print(TestLaw.Demo("candles/harbour-bowl.yaml"), out FittedLabel label);
        double type = label.XHeight.Value * 2816 / 1536;
        double[] baselines =
        [
            .. label.Scene.All.OfType<TextItem>().Where(t => Math.Abs(t.SizeMm - type) < 0.01).Select(t => t.BaselineMm).Distinct().Order(),
        ];
        Assert.True(baselines.Length > 10);
        Assert.All(baselines.Zip(baselines.Skip(1)), pair => Assert.True(pair.Second - pair.First >= (type * 1.2) - 1e-6));
    }

    [Outside("Directive 76/211/EEC, Annex I, 3.1 (from memory), measured in the printed PDF")]
    [Theory]
    [InlineData(50, 2)]
    [InlineData(51, 3)]
    [InlineData(200, 3)]
    [InlineData(201, 4)]
    [InlineData(1000, 4)]
    [InlineData(1001, 6)]
    public void FiguresOfTheQuantityAreTallEnough(double grams, double least)
    {
        Assessment a = TestLaw.Demo("candles/slate-jar.yaml", "IE");
        using PdfReader pdf = Print(a with { Candle = a.Candle with { NetMass = new Grams(grams) } }, out _);
        double tallest = pdf.DigitHeightsMm(_ => true).Max();
        Assert.True(tallest >= least - 0.02, $"{tallest} < {least}");
    }

    [Fact]
    public void EveryStatementStandsOnTheLabelInOrder()
    {
        Assessment a = TestLaw.Demo("candles/harbour-bowl.yaml");
        using PdfReader pdf = Print(a, out _);
        // A line may break behind a slash; the blank that joins lines here is none of the text.
        string text = pdf.Text().Replace("/ ", "/", StringComparison.Ordinal);
        int at = 0;
        foreach (Language language in a.Languages)
        {
            string word = language.Code == "de" ? "Achtung" : "Warning";
            IEnumerable<string> statements = a
                .Label.Hazard.Concat(a.Label.Precautionary)
                .Select(s => StatementText.Printed(language, s.Code, a.Label));
            foreach (string expected in statements.Prepend(word))
            {
                int found = text.IndexOf(expected, at, StringComparison.Ordinal);
                Assert.True(found >= 0, $"'{expected}' is missing after position {at} in: {text}");
                at = found + expected.Length;
            }
        }

        Assert.Contains(a.Maker.Telephone, text, StringComparison.Ordinal);
        Assert.Contains("2900 g", text, StringComparison.Ordinal);
        Assert.All(a.Label.Named, n => Assert.Contains(n.Name, text, StringComparison.Ordinal));
    }

    [Outside("CLP Art. 25(6) and Annex II, 2.8: EUH208 with product identifier, supplier's name, address and telephone")]
    [Fact]
    public void AnUnclassifiedCandleWithSensitisersHasEuh208AndItsSupplier()
    {
        Assessment a = TestLaw.Demo("candles/fig-tin.yaml");
        using PdfReader pdf = Print(a, out _);
        string text = pdf.Text();
        Assert.Contains("Contains Isoeugenol, Citronellol, Geraniol. May produce an allergic reaction.", text, StringComparison.Ordinal);
        Assert.Contains("Fig Tin", text, StringComparison.Ordinal);
        Assert.Contains("Tarnvey Candle Shed, 3 Kelp Lane, Port Aldrin, Isle of Tarnvey · +999 20 555 014", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Warning", text, StringComparison.Ordinal);
        Assert.Empty(pdf.RedPathsMm());
    }

    [Fact]
    public void ACleanCandleHasNoHazardText()
    {
        Assessment a = TestLaw.Demo("candles/slate-jar.yaml");
        Assert.Empty(a.Label.All);
        using PdfReader pdf = Print(a, out _);
        Assert.DoesNotContain("Contains", pdf.Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void TextThatDoesNotFitSaysWhatIsMissing()
    {
        Assessment a = TestLaw.Demo("candles/harbour-bowl.yaml");
        Misfit result = Assert.IsType<Misfit>(Make(a with { Candle = a.Candle with { Label = Rectangle(74, 105) } }));
        Assert.True(result.MissingHeight.Value > 0);
        Assert.StartsWith("a larger label: ", result.Remedies[0], StringComparison.Ordinal);
        Assert.Contains(result.Remedies, r => r.StartsWith("fewer languages", StringComparison.Ordinal));

        // What is said to be missing is what is missing: with so much more height it fits.
        var taller = Rectangle(74, 105 + result.MissingHeight.Value + 0.001);
        Assert.NotNull(Make(a with { Candle = a.Candle with { Label = taller } }).Fitted);
    }

    [Fact]
    public void ALabelBelowTheTablesSizeIsRefused()
    {
        Assessment a = TestLaw.Demo("candles/harbour-bowl.yaml");
        Misfit result = Assert.IsType<Misfit>(Make(a with { Candle = a.Candle with { Label = Rectangle(60, 300) } }));
        Assert.Contains("74 x 105 mm", result.Remedies[0], StringComparison.Ordinal);
    }

    [Fact]
    public void SafetySymbolsAreAtLeastFiveMillimetres()
    {
        FittedLabel label = Make(TestLaw.Demo("candles/fig-tin.yaml")).Fitted!;
        string[] needed = ["warning", "attended", "childrenAndPets", "distance", "flammable"];
        Assert.All(needed, n => Assert.True(label.Scene.Marks.Single(m => m.Name == n).HeightMm >= 5));
    }

    [Theory]
    [InlineData("fig-tin")]
    [InlineData("slipway-torch")]
    [InlineData("harbour-bowl")]
    public void No_safety_symbol_stands_alone_in_a_last_row(string candle)
    {
        Assessment a = TestLaw.Demo($"candles/{candle}.yaml");
        var rows = new List<int[]>();
        for (double width = 34; width <= 130; width += 4)
        {
            if (Make(a with { Candle = a.Candle with { Label = Rectangle(width, 120) } }).Fitted is { } label)
            {
                rows.Add([
                    .. label
                        .Scene.Marks.Where(m =>
                            !m.Name.StartsWith("GHS", StringComparison.Ordinal) && m.HeightMm < 9 && m.WidthMm == m.HeightMm
                        )
                        .GroupBy(m => Math.Round(m.YMm, 2))
                        .Select(r => r.Count()),
                ]);
            }
        }

        Assert.Contains(rows, r => r.Length > 1);
        Assert.All(rows.Where(r => r.Length > 1), r => Assert.True(r.Max() - r.Min() <= 1, string.Join(" ", r)));
    }

    [Fact]
    public void NothingLeavesTheLabel()
    {
        foreach (string candle in new[] { "harbour-bowl", "fig-tin", "slate-jar" })
        {
            using PdfReader pdf = Print(TestLaw.Demo($"candles/{candle}.yaml"), out FittedLabel label);
            double width = pdf.Pages[0].Width;
            double height = pdf.Pages[0].Height;
            Assert.All(
                pdf.Pages[0].Letters,
                l =>
                    Assert.True(
                        l.BoundingBox.Left >= 0 && l.BoundingBox.Right <= width && l.BoundingBox.Bottom >= 0 && l.BoundingBox.Top <= height
                    )
            );
            Assert.All(
                label.Scene.Marks,
                m =>
                    Assert.True(
                        m.XMm >= 0 && m.YMm >= 0 && m.XMm + m.WidthMm <= label.Scene.WidthMm && m.YMm + m.HeightMm <= label.Scene.HeightMm
                    )
            );
        }
    }

    [Fact]
    public void TheSameLabelIsTheSameBytes()
    {
        Scene scene = Make(TestLaw.Demo("candles/harbour-bowl.yaml")).Fitted!.Scene;
        var document = new PaperDocument("t", "en", [scene]);
        Assert.Equal(PdfDrawing.Draw(document), PdfDrawing.Draw(document));
        Assert.Equal(PngDrawing.Draw(scene, 300), PngDrawing.Draw(scene, 300));
        Assert.Equal(SvgDrawing.Draw(scene, "t"), SvgDrawing.Draw(scene, "t"));
    }

    [Fact]
    public void ThePngKnowsItsSize()
    {
        Scene scene = Make(TestLaw.Demo("candles/fig-tin.yaml")).Fitted!.Scene;
        byte[] png = PngDrawing.Draw(scene, 300);
        int width = System.Buffers.Binary.BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16));
        Assert.Equal((int)Math.Round(scene.WidthMm / 25.4 * 300), width);
        Assert.Equal("pHYs"u8.ToArray(), png[37..41]);
        Assert.Equal(11811, System.Buffers.Binary.BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(41)));
    }
}

using System.Globalization;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;
using Chandlery.Files;
using Chandlery.Paper.Designs;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.Labels;
using Chandlery.Paper.Proofs;
using Chandlery.Paper.Scenes;
using Chandlery.Paper.Shapes;
using Chandlery.Tests.Pdf;
using Chandlery.Tests.Support;
using Chandlery.Yaml;
using SkiaSharp;

namespace Chandlery.Tests.Paper;

/// <summary>Labels that are cut along an arch or a line of the maker's own.</summary>
public sealed class CutLineTests
{
    private const double MarginMm = 2.5;

    // A bottle with shoulders and a notch in its side, and a hole.
    private const string TagPath =
        "M30 0 H80 C110 0 110 40 110 50 V70 L95 80 L110 90 V150 Q110 160 100 160 H10 A10 10 0 0 1 0 150 V50 C0 40 0 0 30 0 Z";

    private const string Hole = "<circle cx='55' cy='12' r='4'/>";

    private static string Svg(string inside, string size = "width='110mm' height='160mm' viewBox='0 0 110 160'") =>
        $"<svg xmlns='http://www.w3.org/2000/svg' {size}>{inside}</svg>";

    private static LabelRequest Own(string svg) => TestLabels.Ask(LabelForm.Outline, 1, 1).Along(SvgOutline.Read(svg));

    /// <summary>A label cut as a steep roof, a triangle.</summary>
    internal static LabelRequest Roof => Own(Svg("<polygon points='60,0 120,170 0,170'/>"));

    /// <summary>A label cut as the bottle with its notch and hole.</summary>
    internal static LabelRequest Tag => Own(Svg($"<path d='{TagPath}'/>{Hole}"));

    public static TheoryData<string, string> Labels =>
        new()
        {
            { "fig-tin", "arch" },
            { "slate-jar", "arch" },
            { "harbour-bowl", "arch" },
            { "fig-tin", "tag" },
            { "slate-jar", "tag" },
            { "fig-tin", "corners" },
            { "fig-tin", "narrow foot" },
            { "slate-jar", "narrow foot" },
        };

    private static LabelRequest Shape(string shape) =>
        shape switch
        {
            "arch" => TestLabels.Ask(LabelForm.Arch, 130, 160),
            "circle" => TestLabels.Ask(LabelForm.Circle, 90, 90),
            "ring" => TestLabels.Ask(LabelForm.Ring, 80, 80, 0, 16),
            "tag" => Tag,
            "narrow foot" => Own(Svg("<polygon points='0,0 110,0 110,90 60,160 50,160 0,90'/>")),
            _ => Own(Svg("<polygon points='55,0 110,60 110,160 0,160 0,60'/>")),
        };

    [Theory]
    [MemberData(nameof(Labels))]
    public void EverythingKeepsItsMarginFromTheCut(string candle, string shape)
    {
        FittedLabel label = TestLabels.Make(TestLaw.Demo($"candles/{candle}.yaml"), Shape(shape)).Fitted!;
        using SKPath cut = SKPath.ParseSvgPathData(label.Scene.CutPath!);
        List<SKPoint> edge = [.. Along(cut)];
        IEnumerable<(double Left, double Top, double Right, double Bottom)> boxes =
        [
            .. label.Scene.All.OfType<TextItem>().Select(t => (t.XMm, t.BaselineMm - (t.SizeMm * 0.7), t.XMm + t.WidthMm, t.BaselineMm)),
            .. label.Scene.Marks.Select(m => (m.XMm, m.YMm, m.XMm + m.WidthMm, m.YMm + m.HeightMm)),
        ];
        Assert.NotEmpty(boxes);
        foreach ((double left, double top, double right, double bottom) in boxes)
        {
            foreach (double x in new[] { left, (left + right) / 2, right })
            {
                foreach (double y in new[] { top, bottom })
                {
                    Assert.True(cut.Contains((float)x, (float)y), $"{x:0.0}, {y:0.0} lies outside");
                }
            }

            double nearest = edge.Min(p =>
                Math.Sqrt(
                    Math.Pow(Math.Max(0, Math.Max(left - p.X, p.X - right)), 2)
                        + Math.Pow(Math.Max(0, Math.Max(top - p.Y, p.Y - bottom)), 2)
                )
            );
            Assert.True(nearest >= MarginMm - 0.05, $"{nearest:0.00} mm from the cut at {left:0.0}, {top:0.0}");
        }
    }

    [Theory]
    [InlineData("M0 0 H100 V60 H0 Z", 10, 20, 5, 6, 10)]
    [InlineData("M0 0 H100 V60 H0 Z", 97, 20, 5, 6, 0)]
    [InlineData("M0 0 H100 V60 H0 Z", 110, 20, 5, 6, 0)]
    [InlineData("M0 0 H100 V60 H0 Z M40 20 H60 V40 H40 Z", 45, 25, 5, 5, 0)]
    [InlineData("M0 0 H100 V60 H0 Z M40 20 H60 V40 H40 Z", 63, 44, 5, 5, 5)]
    [InlineData("M0 0 L100 100 L0 100 Z", 10, 40, 10, 20, 10)]
    [InlineData("M50 0 L100 100 L0 100 Z", 45, 60, 10, 10, 22.3607)]
    public void TheDistanceOfABoxFromTheCutIsThatOfItsNearestPoint(
        string path,
        double x,
        double y,
        double width,
        double height,
        double distance
    ) => Assert.Equal(distance, CutLine.Of(path).DistanceOf((x, y, x + width, y + height)), 4);

    [Theory]
    [InlineData("fig-tin", "arch")]
    [InlineData("slate-jar", "tag")]
    [InlineData("fig-tin", "circle")]
    [InlineData("fig-tin", "ring")]
    [InlineData("fig-tin", "corners")]
    public void ThePdfIsMeasuredAgainstTheLineAlongWhichItIsCut(string candle, string shape)
    {
        Assessment plain = TestLaw.Demo($"candles/{candle}.yaml", "IE");
        Assessment a = plain with { Candle = plain.Candle with { Label = Shape(shape) } };
        var made = (MadeLabel)TestLaw.Made("label", a);
        Inspection own = FromCut(made, a);
        Assert.True(own.Holds);
        Assert.InRange(double.Parse(own.Measured[..^3], CultureInfo.InvariantCulture), MarginMm - 0.05, MarginMm + 3);

        // The same print, cut along a smaller line: it would cut into the letters, and so it must fail.
        Scene page = made.Document.Pages[0];
        using var smaller = new SKPath(SKPath.ParseSvgPathData(page.CutPath!));
        smaller.Transform(SKMatrix.CreateScale(0.94f, 0.94f, (float)page.WidthMm / 2, (float)page.HeightMm / 2));
        MadeLabel wrong = made with { Document = made.Document with { Pages = [page with { CutPath = smaller.ToSvgPathData() }] } };
        Assert.False(FromCut(wrong, a).Holds);
        Assert.IsType<MissingPaper>(MeasuredPaper.Of(a, wrong));
    }

    [Outside("CLP, Art. 31(1): labels shall be readable horizontally when the package is set down normally")]
    [Fact]
    public void TurnedTextOfTheLawIsNoLabel()
    {
        Assessment a = TestLaw.Demo("candles/fig-tin.yaml", "IE");
        var made = (MadeLabel)TestLaw.Made("label", a with { Candle = a.Candle with { Label = Shape("ring") } });
        Assert.True(LabelInspector.Inspect(made, a).Single(i => i.What == "direction of text").Holds);
        Scene page = made.Document.Pages[0];
        var turned = new MadeLabel(made.Document with { Pages = [page with { Items = [.. page.Items.Select(Turned)] }] }, made.LeftOff);
        Inspection direction = LabelInspector.Inspect(turned, a).Single(i => i.What == "direction of text");
        Assert.False(direction.Holds);
        Assert.Equal("CLP Art. 31(1)", direction.Clause);
    }

    private static SceneItem Turned(SceneItem item) =>
        item switch
        {
            TextItem text => text with { AngleDegrees = 4 },
            TaggedItem tagged => tagged with { Items = [.. tagged.Items.Select(Turned)] },
            _ => item,
        };

    private static Inspection FromCut(MadeLabel label, Assessment a) =>
        LabelInspector.Inspect(label, a).Single(i => i.What == "nearest letter or pictogram to the cut");

    private static IEnumerable<SKPoint> Along(SKPath path)
    {
        using var measure = new SKPathMeasure(path);
        do
        {
            for (float way = 0; way < measure.Length; way += 0.1f)
            {
                yield return measure.GetPosition(way);
            }
        } while (measure.NextContour());
    }

    [Fact]
    public void LinesAreAsWideAsTheOutlineAllowsAtTheirHeight()
    {
        // A triangle on its base, 100 wide and 100 high: at a depth of y it is y wide, and an edge's margin takes √5/2 times its width.
        var shape = new LabelShape(
            Own(Svg("<polygon points='50,0 100,100 0,100'/>", "width='100mm' height='100mm' viewBox='0 0 100 100'")),
            ""
        );
        (double left, double right) = shape.Room(2).Edges(60, 64)!.Value;
        Assert.Equal(60 - (2 * 2 * Math.Sqrt(5) / 2), right - left, 3);
        Assert.Null(shape.Room(2).Edges(1, 5));
        Assert.Equal(5000, shape.AreaMm2, 6);
    }

    // The half circle of an arch of 60 is 52 wide where √(30² - 26²) = 14.97 are left to its middle: 74 below that need 89.03.
    [Theory]
    [InlineData(89, false)]
    [InlineData(89.1, true)]
    public void AnArchHoldsTheLawsSizeWhenTheRectangleLiesInside(double height, bool holds) =>
        Assert.Equal(
            holds,
            new LabelShape(TestLabels.Ask(LabelForm.Arch, 60, height), "").Holds(new LabelSize(new Millimetres(52), new Millimetres(74)))
        );

    [Fact]
    public void AHoleMayTakeAwayTheLawsSize()
    {
        const string size = "width='60mm' height='80mm' viewBox='0 0 60 80'";
        var law = new LabelSize(new Millimetres(52), new Millimetres(74));
        Assert.True(new LabelShape(Own(Svg("<rect width='60' height='80'/>", size)), "").Holds(law));
        Assert.False(new LabelShape(Own(Svg("<rect width='60' height='80'/><circle cx='30' cy='12' r='3'/>", size)), "").Holds(law));
    }

    [Fact]
    public void CurvesAreReadAsTheyAreDrawnAndInTheirRealSize()
    {
        // A circle of radius 3 cm, in units of half a millimetre.
        LabelOutline outline = SvgOutline.Read(Svg("<circle cx='80' cy='70' r='60'/>", "width='8cm' height='8cm' viewBox='0 0 160 160'"));
        Assert.Equal(60, outline.WidthMm, 1);
        Assert.Equal(
            Math.PI * 900,
            new LabelShape(TestLabels.Ask(LabelForm.Outline, 1, 1).Along(outline), "").AreaMm2,
            0.002 * Math.PI * 900
        );
        using SKPath path = SKPath.ParseSvgPathData(outline.Path);
        Assert.Equal(0, path.TightBounds.Left, 1.0);
        Assert.Contains("C", outline.Path, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("<path d='M0 0 L80 80 L80 0 L0 80 Z'/>", "crosses itself")]
    [InlineData("<path d='M0 0 L80 0 L80 80'/>", "not closed")]
    [InlineData("<path d='M0 0 L80 0 Z'/>", "encloses nothing")]
    [InlineData("<path d='M0 0 L80 0 K 7'/>", "cannot be read")]
    [InlineData("<rect width='20' height='20'/><rect x='40' width='20' height='20'/>", "several lines")]
    [InlineData("<rect width='80' height='80' rx='4'/>", "rounded rectangle")]
    [InlineData("<text>cut here</text>", "cannot be printed as a path")]
    [InlineData("<image href='tag.png'/>", "cannot be printed as a path")]
    [InlineData("", "shows nothing")]
    [InlineData("<rect width='80'", "no well-formed SVG")]
    public void WhatIsNoCutLineIsRefused(string inside, string expected) =>
        Assert.Contains(expected, Assert.Throws<FormatException>(() => SvgOutline.Read(Svg(inside))).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("viewBox='0 0 60 90'")]
    [InlineData("width='60' height='90' viewBox='0 0 60 90'")]
    [InlineData("width='60mm' height='90mm'")]
    [InlineData("width='60px' height='90px' viewBox='0 0 60 90'")]
    public void ADrawingWithoutARealSizeIsRefused(string size) =>
        Assert.Contains(
            "size in real units",
            Assert.Throws<FormatException>(() => SvgOutline.Read(Svg("<rect width='60' height='90'/>", size))).Message,
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData("shape: outline", "either corners or a file")]
    [InlineData("shape: outline, outlineMm: [0 0, 90 90, 90 0, 0 90]", "crosses itself")]
    [InlineData("shape: outline, outlineMm: [0 0, 90 9x, 90 0]", "'90 9x' is no corner")]
    [InlineData("shape: outline, outlineMm: [0 0, 3 0, 3 3]", "3 mm wide and 3 mm high")]
    [InlineData("shape: outline, file: ../tag.svg", "name of a file in the same folder")]
    [InlineData("shape: outline, file: none.svg", "There is no file 'none.svg'")]
    [InlineData("shape: outline, file: bad.svg", "no outline of a label: its line crosses itself")]
    [InlineData("shape: outline, file: large.svg", "larger than 1 MB")]
    [InlineData("shape: arch, widthMm: 60, heightMm: 30", "higher than half its width")]
    [InlineData("shape: arch, widthMm: 60", "'heightMm' is missing")]
    public void ABadShapeIsToldWithItsPlace(string label, string expected)
    {
        using var folder = new MakersFolder();
        folder
            .Write("candles/bad.svg", Svg("<path d='M0 0 L80 80 L80 0 L0 80 Z'/>"))
            .Write("candles/large.svg", new string(' ', 1_000_001))
            .Write("candles/fig-tin.yaml", folder.Read("candles/fig-tin.yaml").TrimEnd() + $"\nlabel: {{ {label} }}\n");
        Problem problem = DeclarationFolder
            .Open(folder.Path, TestLaw.Lawbook.Vocabulary)
            .Problems.Found.First(p => p.What.Contains(expected, StringComparison.Ordinal));
        Assert.EndsWith("fig-tin.yaml", problem.Place.File, StringComparison.Ordinal);
        Assert.True(problem.Place.Line > 1 && problem.Place.Column > 1);
    }

    [Outside("ISO 32000-1, 8.6.6.4 (separations), 8.6.7 (overprint); from memory")]
    [Fact]
    public void ThePressCutsAlongTheLineThatTheFileHolds()
    {
        using var folder = new MakersFolder();
        folder
            .Write("candles/tag.svg", Svg($"<path d='{TagPath}'/>{Hole}"))
            .Write("candles/fig-tin.yaml", folder.Read("candles/fig-tin.yaml").TrimEnd() + "\nlabel: { shape: outline, file: tag.svg }\n");
        LabelRequest asked = folder.Assess("fig-tin", "IE").Candle.Label!;
        Assert.Equal("outline of 110 x 160 mm", asked.ToString());
        FittedLabel label = TestLabels.Make(TestLaw.Demo("candles/fig-tin.yaml"), asked).Fitted!;
        var raw = new RawPdf(PdfDrawing.Draw(new PaperDocument("t", "en", [label.Scene]), PdfPurpose.Press));
        raw.Single("[/Separation/CutLine");
        Assert.Contains("SCN", raw.Content(), StringComparison.Ordinal);
        Assert.Contains("/OP true", raw.Text, StringComparison.Ordinal);
        Assert.All(
            MeasuredPage.ReadAll(PdfDrawing.Draw(new PaperDocument("t", "en", [label.Scene]))),
            p => Assert.Equal((110, 160), (Math.Round(p.WidthMm, 2), Math.Round(p.HeightMm, 2)))
        );
    }
}

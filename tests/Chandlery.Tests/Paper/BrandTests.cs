using Chandlery.Core.Declared;
using Chandlery.Core.Declared.Reading;
using Chandlery.Files;
using Chandlery.Paper.Designs;
using Chandlery.Paper.Scenes;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Paper;

/// <summary>Brands: what is declared, what is refused, and what is drawn.</summary>
public class BrandTests
{
    private static Brand? Read(string text, Problems problems) =>
        (Brand?)new DeclarationReader(TestLaw.Lawbook.Vocabulary).Read("declares: brand\n" + text, "brand.yaml", "brand", problems);

    [Theory]
    [InlineData("deep: '#12345'", "must be a colour")]
    [InlineData("deep: blue", "must be a colour")]
    [InlineData("deep: { screen: '#123456', cmyk: 10 20 30 }", "no four inks")]
    [InlineData("deep: { screen: '#123456', cmyk: 10 20 30 400 }", "no four inks")]
    [InlineData("deep: { screen: '#123456', spot: 'a(b' }", "no name for an ink")]
    [InlineData("notes: { cirtus: '#123456' }", "There is no note 'cirtus'")]
    [InlineData("logo: ../logo.svg", "name of a file in the same folder")]
    [InlineData("logo: logo.exe", "name of a file in the same folder")]
    [InlineData("nameFont: Name.woff2", "name of a file in the same folder")]
    [InlineData("monogram: ABCD", "no monogram")]
    [InlineData("showsShare: yes", "showsShare")]
    public void WhatIsWrongIsSaidWithItsLine(string line, string said)
    {
        var problems = new Problems();
        Assert.Null(Read(line + "\n", problems));
        Problem problem = Assert.Single(problems.Found);
        Assert.Contains(said, problem.What, StringComparison.Ordinal);
        Assert.Equal(2, problem.Place.Line);
        Assert.NotEmpty(problem.Remedy);
    }

    [Fact]
    public void InksOfAPressAreTakenAsDeclared()
    {
        var problems = new Problems();
        Brand brand = Read("deep: { screen: '#14394A', cmyk: 75 25 0 70 }\naccent: { screen: '#C0A050', spot: Gold foil }\n", problems)!;
        Assert.Empty(problems.Found);
        var palette = new Palette(brand);
        Assert.Equal(new Cmyk(75, 25, 0, 70), palette.Deep(Ink.Black).Process);
        Assert.Equal("Gold foil", palette.Accent(Ink.Black).Spot);
        Assert.Equal(Ink.White, palette.Paper);
    }

    [Outside("ISO 12647-2 and common practice of printers: black is black ink alone; plain arithmetic from RGB, grey to black")]
    [Theory]
    [InlineData(0, 0, 0, 0, 0, 0, 100)]
    [InlineData(255, 255, 255, 0, 0, 0, 0)]
    [InlineData(255, 0, 0, 0, 100, 100, 0)]
    [InlineData(128, 128, 128, 0, 0, 0, 50)]
    public void ColoursOfTheScreenBecomeInks(int red, int green, int blue, double cyan, double magenta, double yellow, double key) =>
        Assert.Equal(new Cmyk(cyan, magenta, yellow, key), Cmyk.OfRgb((byte)red, (byte)green, (byte)blue));

    [Outside("WCAG 2.2, relative luminance and contrast ratio: black on white is 21 to 1, #777777 on white 4.48 to 1")]
    [Theory]
    [InlineData("#000000", "#FFFFFF", 21)]
    [InlineData("#777777", "#FFFFFF", 4.48)]
    public void ContrastIsReckonedAsPublished(string one, string other, double ratio) =>
        Assert.Equal(ratio, Ink.Contrast(Ink.Of(one), Ink.Of(other)), 2);

    [Theory]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'><text>a</text></svg>", "convert it to outlines")]
    [InlineData("<svg viewBox='0 0 9 9'><path style='fill:red' d='M0 0L9 9'/></svg>", "plain SVG")]
    [InlineData("<svg viewBox='0 0 9 9'><path transform='rotate(4)' d='M0 0L9 9'/></svg>", "moving and scaling")]
    [InlineData("<svg viewBox='0 0 9 9'><image href='x.png'/></svg>", "convert it to outlines")]
    [InlineData("<svg viewBox='0 0 9 9'></svg>", "shows nothing")]
    [InlineData("<svg><path d='M0 0L9 9'/></svg>", "neither a viewBox nor")]
    [InlineData("<svg viewBox='0 0 9 9'><path d='M0 0 Q'/></svg>", "cannot be read")]
    [InlineData("<p/>", "it is no SVG")]
    [InlineData("<svg", "well-formed")]
    public void ALogoThatCannotBePrintedWholeIsRefused(string svg, string said) =>
        Assert.Contains(said, Assert.Throws<FormatException>(() => SvgLogo.Read(svg)).Message, StringComparison.Ordinal);

    [Fact]
    public void ALogoIsPlacedInTheMiddleOfItsBox()
    {
        LogoArt logo = SvgLogo.Read(
            "<svg viewBox='10 10 20 10'><g transform='translate(10 10)' fill='#ff0000'><rect width='20' height='10'/></g></svg>"
        );
        PathItem path = Assert.IsType<PathItem>(Assert.Single(logo.In(new Box(100, 50, 40, 40))));
        Assert.Equal(100, path.XMm, 6);
        Assert.Equal(60, path.YMm, 6);
        Assert.Equal(2, path.ScaleMm, 6);
        Assert.Equal((byte)255, path.Fill!.Red);
    }

    [Theory]
    [InlineData(40, true)]
    [InlineData(4000, false)]
    public void ALogoThatIsTooCoarseForPrintIsSaid(int dots, bool said)
    {
        Chandlery.Core.Assessed.Assessment a = TestLaw.DemoEdited(
            "candles/harbour-bowl.yaml",
            "IE",
            text => text + "design: { name: tideline }\n"
        );
        var logo = new LogoArt(dots, dots, [], new PixelGrid(dots, dots, new byte[dots * dots * 3]));
        var request = new Chandlery.Paper.Papers.PaperRequest(
            a,
            a.Languages[0],
            TestLaw.WaxOf(a),
            TestLaw.Lawbook,
            TestLaw.Shop,
            new Chandlery.Paper.Papers.PaperSettings()
        )
        {
            Catalogue = DeclarationFolder.Open(TestLaw.DemoFolder, TestLaw.Lawbook.Vocabulary).Catalogue,
            Brand = BrandKit.None with { Logo = logo },
        };
        var made = Assert.IsType<Chandlery.Paper.Papers.Labels.MadeLabel>(new Chandlery.Paper.Papers.Labels.LabelPaper().Make(request));
        Assert.Equal(said, made.Warnings.Any(w => w.Contains("dots an inch", StringComparison.Ordinal)));
    }

    [Fact]
    public void AFileThatIsMissingOrNoFontIsSaidAtItsLine()
    {
        string folder = Directory.CreateTempSubdirectory("brand").FullName;
        try
        {
            File.WriteAllText(Path.Combine(folder, "Name.ttf"), "no font");
            string file = Path.Combine(folder, "brand.yaml");
            var problems = new Problems();
            Catalogue catalogue = TestLaw.Read(problems, (file, "declares: brand\nlogo: logo.svg\nnameFont: Name.ttf\n"));
            Assert.Empty(problems.Found);
            BrandFiles.Open(catalogue, problems);
            Assert.Equal([2, 3], problems.Found.Select(p => p.Place.Line).Order());
            Assert.Contains(problems.Found, p => p.What.Contains("There is no file 'logo.svg'", StringComparison.Ordinal));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}

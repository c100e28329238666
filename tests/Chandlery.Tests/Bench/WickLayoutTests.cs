using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Making;
using Chandlery.Core.Making.Layouts;
using Chandlery.Core.Quantities;
using Chandlery.Paper.Drawing;
using Chandlery.Tests.Paper;
using Chandlery.Tests.Support;
using Chandlery.Yaml;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics;

namespace Chandlery.Tests.Bench;

public sealed class WickLayoutTests
{
    private const double MmPerPoint = 25.4 / 72;

    private static double RatioOf(int wicks) => 1000 / LayoutFinder.Best(new RoundFloor(1000), wicks).FreeRadius.Value;

    // Radius of the vessel over that of the free circles, as formulas of what touches what in the published packings.
    public static TheoryData<int, double> ClosedForms =>
        new()
        {
            { 1, 1 },
            { 2, 2 },
            { 3, 1 + (2 / Math.Sqrt(3)) },
            { 4, 1 + Math.Sqrt(2) },
            { 5, 1 + Math.Sqrt(2 * (1 + (1 / Math.Sqrt(5)))) },
            { 6, 3 },
            { 7, 3 },
            { 8, 1 + (1 / Math.Sin(Math.PI / 7)) },
            { 9, 1 + (1 / Math.Sin(Math.PI / 8)) },
            { 11, 1 + (1 / Math.Sin(Math.PI / 9)) },
            { 13, 2 + Math.Sqrt(5) },
            { 15, 1 + Math.Sqrt(6 + (2 / Math.Sqrt(5)) + (4 * Math.Sqrt(1 + (2 / Math.Sqrt(5))))) },
            { 18, 1 + Math.Sqrt(2) + Math.Sqrt(6) },
            { 19, 1 + Math.Sqrt(2) + Math.Sqrt(6) },
        };

    [Theory]
    [MemberData(nameof(ClosedForms))]
    [Outside(
        "Best packings of equal circles in a circle: U. Pirl, Math. Nachr. 40 (1969) 111-124; Graham, Lubachevsky, Nurmela, Östergård, Discrete Math. 181 (1998) 139-154: which circles touch which, from memory; the ratios follow as formulas"
    )]
    public void A_round_vessel_has_the_published_packings(int wicks, double ratio) => Assert.Equal(ratio, RatioOf(wicks), 6);

    [Theory]
    [InlineData(10, 3.8130256)]
    [InlineData(12, 4.0296019)]
    [InlineData(14, 4.3284286)]
    [InlineData(16, 4.6154256)]
    [InlineData(17, 4.7920337)]
    [Outside(
        "Graham, Lubachevsky, Nurmela, Östergård, Discrete Math. 181 (1998) 139-154, table of the best known packings; figures from memory"
    )]
    public void Packings_without_a_short_formula_have_the_published_ratio(int wicks, double ratio) =>
        Assert.Equal(ratio, RatioOf(wicks), 6);

    public static TheoryData<int, double> Squares =>
        new()
        {
            { 1, 0.5 },
            { 2, 1 / (2 + Math.Sqrt(2)) },
            { 3, 1 / (2 + ((Math.Sqrt(6) + Math.Sqrt(2)) / 2)) },
            { 4, 0.25 },
            { 5, (Math.Sqrt(2) - 1) / 2 },
            { 9, 1.0 / 6 },
        };

    [Theory]
    [MemberData(nameof(Squares))]
    [Outside(
        "Best packings of equal circles in a square: J. Schaer, Canad. Math. Bull. 8 (1965) 273-277, and Schaer with A. Meir; from memory"
    )]
    public void A_square_vessel_has_the_published_packings(int wicks, double radius)
    {
        var floor = Floor.Of(new RectangularSection(new Millimetres(100), new Millimetres(100)));
        Assert.Equal(100 * radius, LayoutFinder.Best(floor, wicks).FreeRadius.Value, 4);
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(3, 2)]
    [InlineData(6, 3)]
    [Outside(
        "N. Oler, Canad. Math. Bull. 4 (1961) 153-155: triangular numbers of circles in an equilateral triangle stand in rows; from memory"
    )]
    public void A_triangle_holds_triangular_numbers_in_rows(int wicks, int rows)
    {
        var triangle = new OutlineSection([Corner(0, 0), Corner(100, 0), Corner(50, 50 * Math.Sqrt(3))]);
        double radius = 100 / ((2 * (rows - 1)) + (2 * Math.Sqrt(3)));
        Assert.Equal(radius, LayoutFinder.Best(Floor.Of(triangle), wicks).FreeRadius.Value, 4);
        Assert.Equal(300, triangle.Perimeter.Value, 9);
        Assert.Equal(50 * 50 * Math.Sqrt(3), triangle.AreaSquareMillimetres, 9);
        Assert.Equal(50 * Math.Sqrt(3), triangle.Across.Value, 9);
    }

    [Fact]
    public void In_a_corner_that_points_inwards_wicks_keep_off_the_wall_too()
    {
        var angle = new OutlineSection([Corner(0, 0), Corner(120, 0), Corner(120, 60), Corner(60, 60), Corner(60, 120), Corner(0, 120)]);
        WickLayout layout = LayoutFinder.Best(Floor.Of(angle), 3);

        // One in the elbow and one in each arm do better than the three squares of 60 mm that the angle is made of.
        Assert.InRange(layout.FreeRadius.Value, 30 - 1e-6, 32);
        Assert.All(layout.Wicks, w => Assert.False(w.XMm > 60 - 1e-6 && w.YMm > 60 - 1e-6));
        for (int i = 0; i <= 600; i++)
        {
            double along = i / 10.0;
            Assert.All(
                layout.Wicks,
                w =>
                    Assert.True(
                        Math.Min(w.To(new FloorPoint(60, 60 + along)), w.To(new FloorPoint(60 + along, 60)))
                            > layout.FreeRadius.Value - 1e-6
                    )
            );
        }
    }

    [Theory]
    [InlineData(7, "1+6")]
    [InlineData(8, "1+7")]
    [InlineData(12, "3+9")]
    [InlineData(19, "1+6+12")]
    public void Rings_are_even_and_never_better_than_the_best(int wicks, string rings)
    {
        var floor = new RoundFloor(100);
        WickLayout symmetric = RingLayout.Best(floor, wicks)!;
        Assert.Equal(rings, string.Join('+', RingLayout.Rings(symmetric)));
        Assert.Equal(wicks, symmetric.Wicks.Count);
        Assert.True(symmetric.FreeRadius.Value <= LayoutFinder.Best(floor, wicks).FreeRadius.Value + 1e-6);
        Assert.Equal(symmetric.FreeRadius.Value, WickLayout.Of(floor, symmetric.Wicks).FreeRadius.Value, 9);
    }

    [Fact]
    public void The_same_wicks_are_laid_out_alike_every_time() =>
        Assert.Equal(LayoutFinder.Best(new RoundFloor(80), 11).Wicks, LayoutFinder.Best(new RoundFloor(80), 11).Wicks);

    [Theory]
    [InlineData(120, 7, null, null, WickVerdict.Fits, "Common practice (no source)")]
    [InlineData(120, 7, 20.0, 30.0, WickVerdict.FarApart, "The wick maker asks for 2 cm to 3 cm")]
    [InlineData(120, 7, 50.0, 60.0, WickVerdict.TooMany, "Use fewer wicks.")]
    [InlineData(120, 19, null, null, WickVerdict.TooMany, "flames that stand close run into one fire")]
    [InlineData(300, 3, null, null, WickVerdict.FarApart, "It is no reason for more flames")]
    [InlineData(120, 1, null, null, WickVerdict.Fits, "by the wick maker's table")]
    public void Too_many_or_too_few_is_said_with_the_reason(
        double across,
        int count,
        double? from,
        double? to,
        WickVerdict verdict,
        string says
    )
    {
        using var folder = new MakersFolder();
        Vessel vessel = folder.Catalogue.OfKind<Vessel>().First() with
        {
            Inner = new VesselSize(new RoundSection(new Millimetres(across)), new Millimetres(80)),
        };
        var wicks = new Wicks(count, null, new Millimetres(5))
        {
            Spacing = from is { } least ? new WickSpacing(new Millimetres(least), new Millimetres(to!.Value)) : null,
        };
        WickPlan plan = WickPlan.Of(wicks, vessel);
        Assert.Equal(verdict, plan.Verdict);
        Assert.Contains(says, plan.Note, StringComparison.Ordinal);
        Assert.DoesNotMatch("(?i)(use|add|try|take) more|more wicks (fit|would)", plan.Note);
    }

    [Fact]
    public void Seven_wicks_of_a_round_bowl_are_measured_in_the_templates_pdf()
    {
        Assessment a = TestLaw.Demo("candles/tide-bowl.yaml");
        using var pdf = new PdfReader(PdfDrawing.Draw(TestLaw.Made("wick-template", a).Document));
        Assert.Single(pdf.Pages);
        Assert.Equal((210, 297), (Math.Round(pdf.SizeMm().Width, 3), Math.Round(pdf.SizeMm().Height, 3)));
        List<PdfRectangle> boxes = Boxes(pdf, 0);
        (double X, double Y)[] wicks = [.. Crosses(boxes)];
        Assert.Equal(7, wicks.Length);

        // A round floor of 120 mm: one wick in the middle and six around it, a third of the radius free around each.
        PdfRectangle wall = Assert.Single(boxes, b => Math.Abs((b.Width * MmPerPoint) - 120) < 0.02);
        Assert.Equal(120, wall.Height * MmPerPoint, 1);
        (double X, double Y) middle = (wall.Centroid.X * MmPerPoint, wall.Centroid.Y * MmPerPoint);
        double[] fromMiddle = [.. wicks.Select(w => Distance(w, middle)).Order()];
        Assert.Equal(0, fromMiddle[0], 1);
        Assert.All(fromMiddle.Skip(1), d => Assert.Equal(40, d, 1));
        double closest = wicks.SelectMany((w, i) => wicks.Take(i).Select(o => Distance(w, o))).Min();
        Assert.InRange(closest, 39.98, 40.02);

        // The scales that prove the print, in both directions.
        Assert.Contains(boxes, b => Math.Abs((b.Width * MmPerPoint) - 100) < 0.01 && b.Height < 0.1);
        Assert.Contains(boxes, b => Math.Abs((b.Height * MmPerPoint) - 100) < 0.01 && b.Width < 0.1);
        Assert.Contains("each must be 100 mm long", pdf.Text(), StringComparison.Ordinal);
        Assert.Contains("40.0 mm apart, 20.0 mm from the wall", pdf.Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_bowl_that_is_larger_than_the_sheet_goes_over_several_that_fit_together()
    {
        Assessment a = TestLaw.Demo("candles/harbour-bowl.yaml");
        using var pdf = new PdfReader(PdfDrawing.Draw(TestLaw.Made("wick-template", a).Document));
        Assert.Equal(8, pdf.Pages.Count);
        Assert.Contains("Sheet 4 of 4", pdf.Text(3), StringComparison.Ordinal);
        (double X, double Y)[] first = [.. Crosses(Boxes(pdf, 0))];
        (double X, double Y)[] right = [.. Crosses(Boxes(pdf, 1))];
        (double X, double Y)[] below = [.. Crosses(Boxes(pdf, 2))];
        Assert.Equal(12, first.Length);
        PdfRectangle frame = Boxes(pdf, 0).First(b => b.Width * MmPerPoint is > 150 and < 200 && b.Height * MmPerPoint is > 150 and < 260);
        for (int i = 0; i < first.Length; i++)
        {
            Assert.Equal(first[i].X - (frame.Width * MmPerPoint), right[i].X, 1);
            Assert.Equal(first[i].Y, right[i].Y, 1);
            Assert.Equal(first[i].Y + (frame.Height * MmPerPoint), below[i].Y, 1);
        }
    }

    [Theory]
    [InlineData("outlineMm: [0 0, 100 0]", "three corners")]
    [InlineData("outlineMm: [0 0, 100 0, 50]", "is no corner")]
    [InlineData("outlineMm: [0 0, 100 100, 100 0, 0 100]", "crosses itself")]
    [InlineData("outlineMm: [0 0, 100 0, 50 80], diameterMm: 50", "or 'outlineMm'")]
    public void An_outline_that_is_none_is_refused(string inner, string says)
    {
        var problems = new Problems();
        TestLaw.Read(
            problems,
            ("v.yaml", $"declares: vessel\nname: V\nmaterial: glass\nbrimfulMl: 300\ninner: {{ {inner}, heightMm: 80 }}\n")
        );
        Assert.Contains(says, Assert.Single(problems.Found).What, StringComparison.Ordinal);
    }

    [Fact]
    public void The_command_tells_and_prints_and_answers_for_another_count()
    {
        string folder = Directory.CreateTempSubdirectory("chandlery-wicks-").FullName;
        string candle = Path.Combine(TestLaw.DemoFolder, "candles", "tide-bowl.yaml");
        (int code, string said, string errors) = Command.Run("wicks", candle, "--out", folder);
        Assert.Equal((0, ""), (code, errors));
        Assert.Contains("they stand 4 cm apart and 2 cm from the wall", said, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(folder, "tide-bowl-wick-template.pdf")));
        Assert.Contains("Use fewer wicks", Command.Run("wicks", candle, "--count", "12", "--out", folder).Output, StringComparison.Ordinal);
        Assert.Contains("\"neighboursMm\": 40", Command.Run("wicks", candle, "--json").Output, StringComparison.Ordinal);
        Directory.Delete(folder, recursive: true);
    }

    private static List<PdfRectangle> Boxes(PdfReader pdf, int page) =>
        [.. pdf.Pages[page].Paths.Select((PdfPath p) => p.GetBoundingRectangle()).OfType<PdfRectangle>()];

    // A level stroke of 8 mm: the middle of a wick's cross.
    private static IEnumerable<(double X, double Y)> Crosses(List<PdfRectangle> boxes) =>
        boxes
            .Where(b => Math.Abs((b.Width * MmPerPoint) - 8) < 0.02 && b.Height * MmPerPoint < 0.1)
            .Select(b => (b.Centroid.X * MmPerPoint, b.Centroid.Y * MmPerPoint));

    private static double Distance((double X, double Y) a, (double X, double Y) b) =>
        Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));

    private static (Millimetres, Millimetres) Corner(double x, double y) => (new Millimetres(x), new Millimetres(y));
}

using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Core.SafetyFiles.Quantities;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers;
using Chandlery.Tests.Paper;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.SafetyFiles;

/// <summary>Contents of packages and the e-mark; grams of packaging.</summary>
public sealed class QuantityTests
{
    private static QuantityRules Rules => TestLaw.Lawbook.Safety.Quantities.Find("union")!;

    [Theory]
    [InlineData(5, 0.45)]
    [InlineData(50, 4.5)]
    [InlineData(51, 4.5)]
    [InlineData(100, 4.5)]
    [InlineData(180, 8.1)]
    [InlineData(200, 9)]
    [InlineData(250, 9)]
    [InlineData(300, 9)]
    [InlineData(400, 12)]
    [InlineData(500, 15)]
    [InlineData(1000, 15)]
    [Outside("Directive 76/211/EEC, Annex I, 2.4, table of tolerable negative errors")]
    public void Tolerances_are_those_of_the_table(double nominal, double tolerance) =>
        Assert.Equal(tolerance, Rules.RowFor(nominal)!.Of(nominal), 9);

    [Theory]
    [InlineData(4.9)]
    [InlineData(10_001)]
    public void Outside_the_table_nothing_is_known(double nominal) => Assert.Null(Rules.RowFor(nominal));

    private static WeighingVerdict Verdict(params double[] contents)
    {
        using var folder = new MakersFolder();
        folder.Write(
            "weighings/hb-2611-weighed.yaml",
            "declares: weighing\nbatch: hb-2611\non: 2026-11-16\nby: me\ntareGrams: 100\npackages:\n"
                + string.Concat(
                    contents.Select(c => $"  - {{ grams: {(c + 100).ToString(System.Globalization.CultureInfo.InvariantCulture)} }}\n")
                )
        );
        folder.Change("candles/harbour-bowl.yaml", "netGrams: 2900", "netGrams: 200");
        Catalogue catalogue = folder.Catalogue;
        return WeighingVerdict.Of(
            catalogue.OfKind<Weighing>().Single(),
            catalogue.OfKind<Candle>().Single(c => c.Id == "harbour-bowl"),
            Rules
        );
    }

    [Fact]
    [Outside("Directive 76/211/EEC, Annex I, 1: the mean, once and twice the tolerance; the share of 2.5 % from memory")]
    public void Mean_tolerance_and_twice_the_tolerance_decide()
    {
        Assert.True(Verdict(200, 200, 200).Passes);
        Assert.True(Verdict([.. Enumerable.Repeat(201.0, 39), 190]).Passes);
        Assert.False(Verdict([.. Enumerable.Repeat(201.0, 38), 190]).Passes);
        Assert.False(Verdict(199.9, 200, 200).Passes);
        Assert.False(Verdict([.. Enumerable.Repeat(202.0, 60), 181.9]).Passes);
        Assert.Equal((1, 1), (Verdict(250, 181.9).Short, Verdict(250, 181.9).FarShort));
        Assert.Equal(0, Verdict(250, 191).Short);
    }

    [Fact]
    public void The_e_mark_needs_a_weighing_of_every_batch()
    {
        using var folder = new MakersFolder();
        folder.Change("candles/harbour-bowl.yaml", "netGrams: 2900", "netGrams: 2900\neMark: yes");
        Assert.True(Assert.Single(EMarks.Of(folder.Catalogue, Rules)).Newest!.Passes);
        Assert.Equal(0, Command.Run("weighing", folder.Path).Code);
        File.Delete(Path.Combine(folder.Path, "weighings", "hb-2611-weighed.yaml"));
        (int code, string output, _) = Command.Run("weighing", folder.Path);
        Assert.Equal(1, code);
        Assert.Contains("may not be used on this batch", output, StringComparison.Ordinal);
    }

    private static MakersFolder Marked() =>
        new MakersFolder().Change("candles/harbour-bowl.yaml", "netGrams: 2900", "netGrams: 2900\neMark: yes");

    [Fact]
    [Outside("Directive 76/211/EEC, Annex I, 3.3: the mark is at least 3 mm high, in the same field of vision as the quantity")]
    public void The_e_mark_is_printed_as_high_as_the_law_asks_where_the_weighings_pass()
    {
        using MakersFolder folder = Marked();
        foreach (string id in new[] { "harbour-bowl", "hb-2611" })
        {
            Assessment a = folder.Assess(id, "IE");
            Assert.Null(a.EMark!.WhyNot);
            MadePaper label = TestLaw.Made("label", a);
            Assert.Contains(label.Document.Pages.SelectMany(p => p.Marks), m => m.Name == "eMark");
            using var pdf = new PdfReader(PdfDrawing.Draw(label.Document));
            (double width, double height) = Assert.Single(
                pdf.BlackPathsMm(),
                p => p.Height is > 2.9 and < 3.2 && p.Width is > 2.9 and < 3.2
            );
            Assert.InRange(height, 2.999, 3.1);
            Assert.InRange(width, 2.9, 3.2);
        }
    }

    [Theory]
    [InlineData("weighings/hb-2611-weighed.yaml", "on: 2026-11-16", "on: 2026-11-16\nby: x", null)]
    [InlineData(
        "weighings/hb-2611-weighed.yaml",
        "grams: 4762",
        "grams: 4500",
        "weighing hb-2611-weighed of batch HB-2611-02 does not pass."
    )]
    [InlineData("weighings/hb-2611-weighed.yaml", null, null, "batch HB-2611-02 was not weighed.")]
    [InlineData("candles/harbour-bowl.yaml", "netGrams: 2900", "netGrams: 10001", "the law has no tolerance for 10001 g.")]
    public void The_e_mark_is_refused_with_the_reason(string file, string? from, string? to, string? why)
    {
        using MakersFolder folder = Marked();
        if (from is null)
        {
            File.Delete(Path.Combine(folder.Path, file));
        }
        else if (why is not null)
        {
            folder.Change(file, from, to!);
        }

        Assessment a = folder.Assess("harbour-bowl", "IE");
        if (why is null)
        {
            Assert.Null(a.EMark!.WhyNot);
            return;
        }

        Finding said = a.EMark!.WhyNot!;
        Assert.Equal(("The e-mark is not printed: " + why, Gravity.Look), (said.What, said.Gravity));
        Assert.Contains("76/211", said.Clause.Text, StringComparison.Ordinal);
        Assert.Contains(said, a.Findings);
        Assert.Null(a.EMark.Height);
    }

    [Fact]
    public void Without_a_rule_of_the_place_or_a_weighing_in_its_unit_there_is_no_e_mark()
    {
        using MakersFolder folder = Marked();
        Assessment there = folder.Assess("harbour-bowl", "GB");
        Assert.Equal(
            "The e-mark is not printed: no rule on the contents of packages is known for Great Britain.",
            there.EMark!.WhyNot!.What
        );
        Assert.DoesNotContain(TestLaw.Made("label", there).Document.Pages.SelectMany(p => p.Marks), m => m.Name == "eMark");
        folder.Change("candles/dune-reeds.yaml", "declares: candle", "declares: candle\neMark: yes");
        Assert.StartsWith(
            "The e-mark is not printed: the contents are declared in millilitres",
            folder.Assess("dune-reeds", "IE").EMark!.WhyNot!.What,
            StringComparison.Ordinal
        );
        Assert.Null(folder.Assess("slate-jar", "IE").EMark);
    }

    [Fact]
    public void Packaging_has_a_paper()
    {
        using var folder = new MakersFolder();
        string into = Path.Combine(folder.Path, "out");
        Assert.Equal(0, Command.Run("packaging", folder.Path, "--year", "2026", "--out", into).Code);
        using var reader = new Chandlery.Tests.Paper.PdfReader(File.ReadAllBytes(Path.Combine(into, "packaging.pdf")));
        string text = reader.Text(0);
        Assert.Contains("2026 DE other 1850", text, StringComparison.Ordinal);
        Assert.Contains("Regulation (EU) 2025/40, Art. 44 and 45", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Packaging_is_summed_by_country_year_and_material()
    {
        using var folder = new MakersFolder();
        folder.Change("dispatches/hb-2611-lantern.yaml", "pieces: 1", "pieces: 4");
        Assert.Equal(
            [
                // Bowls, ten diffusers.
                new PackagingSum("DE", 2026, PackagingMaterial.Paper, (4 * 243) + (10 * 38)),
                new PackagingSum("DE", 2026, PackagingMaterial.Glass, 10 * 210),
                new PackagingSum("DE", 2026, PackagingMaterial.Wood, 10 * 8),
                new PackagingSum("DE", 2026, PackagingMaterial.Other, 4 * 1850),
                // A bowl, twelve boxes of tea lights, a diffuser, fifteen shells of melts.
                new PackagingSum("IE", 2026, PackagingMaterial.Paper, 243 + (12 * 32) + 38),
                new PackagingSum("IE", 2026, PackagingMaterial.Glass, 210),
                new PackagingSum("IE", 2026, PackagingMaterial.Aluminium, 12 * 10),
                new PackagingSum("IE", 2026, PackagingMaterial.Plastic, 15 * 14),
                new PackagingSum("IE", 2026, PackagingMaterial.Wood, 8),
                new PackagingSum("IE", 2026, PackagingMaterial.Other, 1850),
            ],
            PackagingSum.Of(folder.Catalogue)
        );
        Assert.Empty(PackagingSum.NotDeclared(folder.Catalogue));
        string text = folder.Read("candles/harbour-bowl.yaml");
        folder.Write("candles/harbour-bowl.yaml", text[..text.IndexOf("packaging:", StringComparison.Ordinal)]);
        Assert.Equal(["harbour-bowl"], PackagingSum.NotDeclared(folder.Catalogue));
    }

    [Fact]
    [Outside("Regulation (EU) 2025/40, Art. 12(1): the sign of the material from 12 August 2028 at the earliest")]
    public void Marks_are_those_of_the_countries_where_candles_go()
    {
        using var folder = new MakersFolder();
        folder.Change("dispatches/hb-2611-lantern.yaml", "country: DE", "country: FR");
        folder.Change("dispatches/hb-2611-person.yaml", "country: IE", "country: US");
        IReadOnlyList<PackagingMark> marks = PackagingMark.Of(folder.Catalogue, TestLaw.Lawbook, TestLaw.Today);
        Assert.Equal(["AT", "DE", "FR", "IE", "US"], marks.Select(m => m.Country).Distinct());
        Assert.Equal(3, marks.Count(m => m.Country == "FR"));
        Assert.Equal(2, marks.Count(m => m.Country == "DE"));
        Assert.Null(marks.Single(m => m.Country == "US").Row);
        Assert.Contains(marks, m => m.Country == "DE" && m.Row!.InForce.From == new DateOnly(2028, 8, 12));
    }
}

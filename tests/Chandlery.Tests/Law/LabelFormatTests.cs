using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Classified;
using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;
using Chandlery.Core.SafetyDataSheets;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Law;

/// <summary>Which sizes hold for which package, on both sides of every step.</summary>
public sealed class LabelFormatTests
{
    private static readonly TextPlace Place = new("test", 1, 1);

    private static Vessel Round(double diameterMm, double heightMm) =>
        new Vessel
        {
            Id = "v",
            Place = Place,
            Name = "v",
            Material = "glass",
            Brimful = new Millilitres(1000),
            Fill = null,
            Inner = null,
            Outer = new VesselSize(new RoundSection(new Millimetres(diameterMm)), new Millimetres(heightMm)),
            IsChildResistant = false,
            HasTactileWarning = false,
        };

    [Theory]
    [InlineData(3000, 52, 74, 10)]
    [InlineData(3000.1, 74, 105, 23)]
    [InlineData(50000, 74, 105, 23)]
    [InlineData(50000.1, 105, 148, 32)]
    [InlineData(500000, 105, 148, 32)]
    [InlineData(500000.1, 148, 210, 46)]
    [Outside("CLP Annex I, 1.2.1.4, Table 1.3: not exceeding 3 litres, greater than 3 but not exceeding 50, ...")]
    public void The_capacity_decides_the_band(double ml, double width, double height, double pictogram)
    {
        SizeBand band = TestLaw.Eu.Formats.On(new DateOnly(2026, 11, 25)).BandFor(new Millilitres(ml));
        Assert.Equal((width, height, pictogram), (band.Label.Width.Value, band.Label.Height.Value, band.Pictogram.Value));
    }

    [Theory]
    [InlineData(500, 1.2)]
    [InlineData(501, 1.4)]
    [InlineData(3000, 1.4)]
    [InlineData(3001, 1.8)]
    [InlineData(50001, 2.0)]
    [Outside("Regulation (EU) 2024/2865, Annex I, 1.2.1.5, Table 1.3: x-height by capacity")]
    public void From_2028_on_letters_grow_with_the_package(double ml, double xHeight) =>
        Assert.Equal(xHeight, TestLaw.Eu.Formats.On(new DateOnly(2028, 1, 1)).BandFor(new Millilitres(ml)).XHeight.Value);

    [Fact]
    public void Formats_to_come_stand_in_the_order_of_their_dates()
    {
        Assert.Equal(
            ["table-1.3-of-2024-2865", "omnibus-2026"],
            new LabelFormats([.. TestLaw.Eu.Formats.Formats.Reverse()], TestLaw.Eu.Formats.Quantity, [])
                .After(new DateOnly(2026, 11, 25))
                .Select(f => f.Id)
        );
        Assert.Equal(["omnibus-2026"], TestLaw.Eu.Formats.After(new DateOnly(2028, 1, 1)).Select(f => f.Id));
        InvalidOperationException none = Assert.Throws<InvalidOperationException>(() => TestLaw.Eu.Formats.On(new DateOnly(1999, 1, 2)));
        Assert.Equal("no label format holds on 1999-01-02", none.Message);
    }

    [Theory]
    [InlineData(50, 2)]
    [InlineData(50.1, 3)]
    [InlineData(200, 3)]
    [InlineData(200.1, 4)]
    [InlineData(1000, 4)]
    [InlineData(1000.1, 6)]
    [Outside("Directive 76/211/EEC, Annex I, 3.1: 2, 3, 4 and 6 mm (from memory)")]
    public void Figures_grow_with_the_quantity(double grams, double height) =>
        Assert.Equal(height, TestLaw.Eu.Formats.Quantity.HeightFor(new Grams(grams), Round(80, 90)).Value);

    // 40 % of height times circumference: 25.4 mm wide and high gives 0.4 x 1 x pi = 1.26 square inches.
    [Theory]
    [InlineData(25.4, 25.4, 1.6)]
    [InlineData(25.4, 101.05, 1.6)]
    [InlineData(25.4, 101.15, 3.2)]
    [InlineData(50.8, 252.6, 3.2)]
    [InlineData(50.8, 252.8, 4.8)]
    [InlineData(254, 202.1, 4.8)]
    [InlineData(254, 202.2, 6.4)]
    [InlineData(508, 404.2, 6.4)]
    [InlineData(508, 404.3, 12.7)]
    [Outside("16 CFR 500.3 (40 % of height times circumference) and 500.21 (5, 25, 100, 400 square inches; from memory)")]
    public void Figures_grow_with_the_main_panel_in_the_United_States(double diameter, double height, double figures) =>
        Assert.Equal(
            figures,
            TestLaw.Lawbook.Edition("united-states").Formats.Quantity.HeightFor(new Grams(100), Round(diameter, height)).Value
        );

    // The whole side is counted: 10 mm wide and 101.8 mm high is 31.98 square centimetres.
    [Theory]
    [InlineData(10, 101.8, 1.6)]
    [InlineData(10, 101.9, 3.2)]
    [InlineData(80, 102.6, 3.2)]
    [InlineData(80, 102.7, 6.4)]
    [InlineData(100, 205.3, 6.4)]
    [InlineData(100, 205.4, 9.5)]
    [InlineData(200, 410.6, 9.5)]
    [InlineData(200, 410.7, 12.7)]
    [Outside("C.R.C., c. 417 (Canada), s. 12 to 16: 32, 258, 645 and 2580 square centimetres; 1.6, 3.2, 6.4, 9.5 and 12.7 mm")]
    public void Figures_grow_with_the_main_surface_in_Canada(double diameter, double height, double figures) =>
        Assert.Equal(figures, TestLaw.Lawbook.Edition("canada").Formats.Quantity.HeightFor(new Grams(100), Round(diameter, height)).Value);

    [Theory]
    [InlineData(80, 120, 2)]
    [InlineData(80, 120.1, 2.5)]
    [InlineData(120.1, 80, 2.5)]
    [InlineData(80, 230, 2.5)]
    [InlineData(80, 230.1, 3.3)]
    [InlineData(80, 360, 3.3)]
    [InlineData(80, 360.1, 4.8)]
    [Outside("National Trade Measurement Regulations 2009 (Australia), reg. 4.12: 120, 230 and 360 mm; 2, 2.5, 3.3 and 4.8 mm")]
    public void Figures_grow_with_the_largest_dimension_in_Australia(double diameter, double height, double figures) =>
        Assert.Equal(
            figures,
            TestLaw.Lawbook.Edition("australia").Formats.Quantity.HeightFor(new Grams(100), Round(diameter, height)).Value
        );

    [Fact]
    [Outside("C.R.C., c. 417 (Canada), s. 12 to 16: letters of at least 1.6 mm, measured at the o of small letters")]
    public void Letters_have_their_height_in_Canada() =>
        Assert.Equal(1.6, TestLaw.Lawbook.Edition("canada").Formats.On(TestLaw.Today).BandFor(new Millilitres(200)).XHeight.Value);

    [Fact]
    public void The_longest_way_across_is_that_of_the_outline()
    {
        Assert.Equal(90, new RectangularSection(new Millimetres(60), new Millimetres(90)).LongestAcross.Value);
        (Millimetres, Millimetres)[] square =
        [
            (new Millimetres(0), new Millimetres(0)),
            (new Millimetres(30), new Millimetres(0)),
            (new Millimetres(30), new Millimetres(40)),
            (new Millimetres(0), new Millimetres(40)),
        ];
        Assert.Equal(50, new OutlineSection(square).LongestAcross.Value);
    }

    [Fact]
    public void A_vessel_of_unknown_size_gets_the_tallest_figures()
    {
        var unknown = new Vessel
        {
            Id = "v",
            Place = Place,
            Name = "v",
            Material = "glass",
            Brimful = new Millilitres(100),
            Fill = null,
            Inner = null,
            Outer = null,
            IsChildResistant = false,
            HasTactileWarning = false,
        };
        Assert.Equal(12.7, TestLaw.Lawbook.Edition("united-states").Formats.Quantity.HeightFor(new Grams(100), unknown).Value);
        Assert.Equal(12.7, TestLaw.Lawbook.Edition("canada").Formats.Quantity.HeightFor(new Grams(100), unknown).Value);
        Assert.Equal(4.8, TestLaw.Lawbook.Edition("australia").Formats.Quantity.HeightFor(new Grams(100), unknown).Value);
    }

    [Theory]
    [InlineData("2025-05-01", null, true)]
    [InlineData("2025-04-30", null, false)]
    [InlineData("2025-05-01", "2024-05-01", false)]
    [InlineData("2026-11-01", "2025-04-30", true)]
    [InlineData("2026-10-31", "2025-04-30", false)]
    [InlineData("2026-10-31", "2025-05-01", true)]
    [InlineData("2026-12-31", null, true)]
    [InlineData("2027-01-01", null, false)]
    [Outside("Regulation (EU) 2023/707, Art. 2: new mixtures from one day, those on the market before it from a later one")]
    public void A_rule_begins_later_for_what_was_on_the_market(string day, string? since, bool holds)
    {
        var rule = new InForce(new DateOnly(2025, 5, 1), new DateOnly(2026, 12, 31), new DateOnly(2026, 11, 1));
        DateOnly? onMarket = since is null ? null : DateOnly.ParseExact(since, "yyyy-MM-dd");
        Assert.Equal(holds, rule.On(DateOnly.ParseExact(day, "yyyy-MM-dd"), onMarket));
    }

    [Theory]
    [InlineData(0.01, 10, true)]
    [InlineData(0.009, 10, false)]
    [InlineData(0.1, 1, true)]
    [Outside(
        "REACH Annex II, 3.2.1(a), Table 1.1 with CLP Annex I, 4.1: the share of Aquatic Chronic 1 divided by its M-factor (from memory)"
    )]
    public void An_M_factor_lowers_the_share_that_is_named(double percent, double m, bool named)
    {
        IReadOnlyList<Substance> substances = TestLaw.Substances(
            TestLaw.Mixture(TestLaw.Line("fish bane", percent, ["Aquatic Chronic 1"], m: m))
        );
        Substance bane = substances.Single(s => s.Name == "fish bane");
        ShareRow row = TestLaw.Eu.SafetySheet.NamedFrom.Single(r => r.DividedBy == MFactorKind.Chronic);
        Assert.Equal(named, SheetDuties.Reached(row, bane));
        Assert.Equal(percent >= row.From.Value, SheetDuties.Reached(row with { DividedBy = MFactorKind.None }, bane));
    }
}

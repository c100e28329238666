using System.Globalization;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Core.Quantities;
using Chandlery.Tests.Law.Readers;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law.Records;

/// <summary>Days, amounts and temperatures from which something holds, on both sides of the bound.</summary>
public sealed class DayBoundTests
{
    private static readonly DateOnly From = Day("2026-03-01");
    private static readonly DateOnly Until = Day("2026-09-30");
    private static readonly DateOnly Existing = Day("2027-03-01");

    private static DateOnly Day(string text) => DateOnly.ParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture);

    [Theory]
    [InlineData("2026-02-28", false)]
    [InlineData("2026-03-01", true)]
    [InlineData("2026-09-30", true)]
    [InlineData("2026-10-01", false)]
    public void First_and_last_day_belong_to_it(string day, bool holds)
    {
        Assert.Equal(holds, new InForce(From, Until).On(Day(day)));
        Assert.Equal(Day(day) <= Until, new InForce(null, Until).On(Day(day)));
        Assert.Equal(Day(day) >= From, new InForce(From, null).On(Day(day)));
        Assert.True(new InForce(null, null).On(Day(day)));
    }

    [Theory]
    [InlineData("2026-02-28", "2027-02-28", false)]
    [InlineData("2026-02-28", "2027-03-01", true)]
    [InlineData("2026-03-01", "2026-03-01", true)]
    [InlineData(null, "2026-03-01", true)]
    public void What_was_on_the_market_before_has_its_own_day(string? since, string day, bool holds) =>
        Assert.Equal(holds, new InForce(From, null, Existing).On(Day(day), since is null ? null : Day(since)));

    [Fact]
    public void Without_a_day_for_it_what_was_on_the_market_has_that_of_all() =>
        Assert.Equal(From, new InForce(From, null).BindsFrom(Day("2020-01-01")));

    [Fact]
    public void It_turns_on_each_first_day_and_behind_the_last() =>
        Assert.Equal([From, Existing, Until.AddDays(1)], new InForce(From, Until, Existing).Turns());

    [Fact]
    public void It_never_turns_without_days() => Assert.Empty(new InForce(null, null).Turns());

    [Theory]
    [InlineData("2025-12-31", "")]
    [InlineData("2026-01-09", "first")]
    [InlineData("2040-01-01", "first")]
    public void The_format_is_the_last_that_is_law(string day, string id)
    {
        LabelFormats formats = InventedLaw.Read().Edition("mainland").Formats;
        if (id.Length > 0)
        {
            Assert.Equal(id, formats.On(Day(day)).Id);
        }
        else
        {
            Assert.Throws<InvalidOperationException>(() => formats.On(Day(day)));
        }
    }

    [Fact]
    public void The_law_is_known_from_its_first_format_on()
    {
        LabelFormat first = InventedLaw.Read().Edition("mainland").Formats.Formats[0];
        LabelFormats formats = InventedLaw.Read().Edition("mainland").Formats with
        {
            Formats =
            [
                first with
                {
                    Id = "later",
                    From = Existing,
                },
                first,
                first with
                {
                    Id = "expected",
                    Status = LegalStatus.Expected,
                    From = Day("1999-01-01"),
                },
            ],
        };
        Assert.Equal(first.From, formats.KnownFrom);
        Assert.Equal("later", formats.On(Existing).Id);
        Assert.Equal(["later"], formats.After(first.From).Select(f => f.Id));
    }

    [Theory]
    [InlineData(2500, 11)]
    [InlineData(2500.1, 21)]
    public void A_band_takes_its_bound_with_it(double millilitres, double pictogram) =>
        Assert.Equal(
            pictogram,
            InventedLaw.Read().Edition("mainland").Formats.Formats[0].BandFor(new Millilitres(millilitres)).Pictogram.Value
        );

    [Theory]
    [InlineData(21.9, true, true)]
    [InlineData(22, false, true)]
    [InlineData(61, false, true)]
    [InlineData(61.1, false, false)]
    public void A_flash_point_is_below_or_up_to_a_bound(double celsius, bool first, bool second)
    {
        IReadOnlyList<FlashRung> rungs = InventedLaw.Read().Edition("mainland").Liquids!.Flash.Rungs;
        Assert.Equal((first, second), (rungs[0].Takes(new Celsius(celsius)), rungs[1].Takes(new Celsius(celsius))));
        Assert.Equal((22, 61), (rungs[0].Bound.Value, rungs[1].Bound.Value));
    }

    [Fact]
    public void A_flash_point_without_a_bound_is_a_fault()
    {
        var rung = new FlashRung(TestLaw.Lawbook.Vocabulary.Categories[0], null, null, null);
        Assert.Equal("a rung of flash points has a bound", Assert.Throws<InvalidOperationException>(() => rung.Bound).Message);
    }

    [Theory]
    [InlineData(0, "2026-03-01")]
    [InlineData(1, "2026-03-02")]
    [InlineData(24, "2026-03-02")]
    [InlineData(24.5, "2026-03-03")]
    [InlineData(72, "2026-03-04")]
    public void A_clock_that_began_ends_with_its_day(double hours, string due) =>
        Assert.Equal(Day(due), new ClockRow("c", [], [], hours, "", Citation.None).DueAfter(From));

    [Theory]
    [InlineData(4.9, null)]
    [InlineData(5, 51.0)]
    [InlineData(5.1, 51.0)]
    [InlineData(51, 51.0)]
    [InlineData(51.1, 101.0)]
    [InlineData(101, 101.0)]
    [InlineData(101.1, null)]
    public void A_quantity_has_the_row_that_ends_with_it(double grams, double? row) =>
        Assert.Equal(row, InventedLaw.Read().Safety.Quantities.Find("mainland")!.RowFor(grams)?.UpToGrams);

    [Theory]
    [InlineData(8.0, null, 4)]
    [InlineData(null, 4.5, 4.5)]
    public void A_tolerance_is_a_share_or_grams(double? percent, double? grams, double tolerance) =>
        Assert.Equal(tolerance, new ToleranceRow(0, 100, percent, grams).Of(50));

    [Theory]
    [InlineData(true, "2026-10-01")]
    [InlineData(false, "2027-10-01")]
    public void Old_labels_end_sooner_after_a_graver_class(bool isGraver, string until) =>
        Assert.Equal(Day(until), InventedLaw.Read().Edition("mainland").Relabelling!.OldLabelsUntil(From, isGraver));
}

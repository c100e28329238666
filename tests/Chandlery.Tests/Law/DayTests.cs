using Chandlery.Core.Law;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law;

/// <summary>The days on which parts of the law begin, each on both sides.</summary>
public sealed class DayTests
{
    private static DateOnly Day(string text) => DateOnly.ParseExact(text, "yyyy-MM-dd");

    [Theory]
    [InlineData("35(2a)", "2026-06-30", null, false)]
    [InlineData("35(2a)", "2026-07-01", null, true)]
    [InlineData("45(1b)", "2026-12-31", null, false)]
    [InlineData("45(1b)", "2027-01-01", null, true)]
    [InlineData("48a", "2027-12-31", null, false)]
    [InlineData("48a", "2028-01-01", null, true)]
    [InlineData("1.5.1.2", "2028-07-01", "2026-06-30", false)]
    [InlineData("1.5.1.2", "2028-07-02", "2026-06-30", true)]
    [InlineData("1.5.1.2", "2026-07-01", "2026-07-01", true)]
    [InlineData("18(3)(b)", "2029-01-01", "2026-12-31", false)]
    [InlineData("18(3)(b)", "2029-01-02", "2026-12-31", true)]
    [InlineData("18(3)(b)", "2027-01-01", "2027-01-01", true)]
    [Outside(
        "Regulation (EU) 2025/2439, Art. 1 (three days of Regulation (EU) 2024/2865); CLP Art. 61(7) and (8), consolidated text of 1 May 2026"
    )]
    public void Each_part_of_the_revision_binds_from_its_day(string part, string on, string? since, bool binds)
    {
        Amendment amendment = TestLaw.Eu.Amendments.Single(a => a.Parts.Contains(part, StringComparison.Ordinal));
        Assert.Equal(binds, amendment.InForce.On(Day(on), since is null ? null : Day(since)));
    }

    [Fact]
    public void Northern_Ireland_has_the_same_days_and_Great_Britain_none()
    {
        Assert.Equal(TestLaw.Eu.Amendments, TestLaw.Lawbook.Edition("northern-ireland").Amendments);
        Assert.Empty(TestLaw.Lawbook.Edition("gb-clp").Amendments);
    }

    [Theory]
    [InlineData("2028-03-31", true, "2028-09-30")]
    [InlineData("2028-03-31", false, "2029-09-30")]
    [Outside("CLP Art. 30, as replaced by Regulation (EU) 2024/2865: 6 months where the hazard is new or graver, 18 months otherwise")]
    public void Old_labels_end(string evaluated, bool graver, string until) =>
        Assert.Equal(Day(until), TestLaw.Eu.Relabelling!.OldLabelsUntil(Day(evaluated), graver));
}

using Chandlery.Core.SafetyFiles.Incidents;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.SafetyFiles;

/// <summary>Clocks run from the day of knowledge, each place's own.</summary>
public sealed class IncidentTests
{
    private static readonly DateOnly Known = new(2026, 11, 21);

    private static IReadOnlyList<IncidentClock> Clocks(string country, string harm, DateOnly day, string reported = "[]")
    {
        using var folder = new MakersFolder();
        folder.Write(
            "incidents/bowl-tall-flame.yaml",
            $"declares: incident\nkind: accident\ncandle: harbour-bowl\ncountry: {country}\nknown: 2026-11-21\nhappened: x\nharm: {harm}\nreported: {reported}\n"
        );
        return IncidentClocks.Of(folder.Catalogue, TestLaw.Lawbook.Safety, day);
    }

    [Fact]
    [Outside("Canada Consumer Product Safety Act, s. 14: all information in 2 days, a written report in 10")]
    public void Canada_has_two_days_and_ten() =>
        Assert.Equal([Known.AddDays(2), Known.AddDays(10)], Clocks("CA", "nothing", Known).Select(c => c.Due!.Value));

    [Fact]
    [Outside("Regulation (EU) 2023/988, Art. 20: without undue delay")]
    public void The_Union_wants_it_without_delay()
    {
        IncidentClock clock = Assert.Single(Clocks("IE", "injury", Known));
        Assert.Equal((Known, ClockState.Open), (clock.Due, clock.State));
        Assert.Equal(ClockState.Overdue, Clocks("IE", "injury", Known.AddDays(1))[0].State);
    }

    [Theory]
    [InlineData("US", "damage", 1)]
    [InlineData("AU", "injury", 2)]
    [Outside("CPSA section 15(b), 24 hours; Australian Consumer Law s. 131, 2 days (both from memory)")]
    public void The_United_States_and_Australia_have_their_own(string country, string harm, int days) =>
        Assert.Equal(Known.AddDays(days), Assert.Single(Clocks(country, harm, Known)).Due);

    [Fact]
    [Outside("PrSG (SR 930.11), Art. 8: at once (from memory)")]
    public void Switzerland_wants_it_at_once() => Assert.Equal(Known, Assert.Single(Clocks("CH", "nothing", Known)).Due);

    [Fact]
    public void New_Zealand_has_no_rule_that_is_known() => Assert.Equal(ClockState.Unknown, Clocks("NZ", "death", Known)[0].State);

    [Fact]
    public void A_report_is_in_time_or_late_and_no_rule_is_said()
    {
        Assert.Equal(ClockState.Done, Clocks("US", "damage", Known.AddDays(9), "[{ on: 2026-11-22, clock: defect }]")[0].State);
        Assert.Equal(ClockState.DoneLate, Clocks("US", "damage", Known.AddDays(9), "[{ on: 2026-11-23, clock: defect }]")[0].State);
        Assert.Equal(ClockState.NotDue, Clocks("AU", "damage", Known)[0].State);
        Assert.Equal(ClockState.Unknown, Clocks("JP", "damage", Known)[0].State);
    }

    [Theory]
    [InlineData("on: 2026-11-21, clock: danger", "on: 2026-11-20, clock: danger", "A report is of a day before 'known'.")]
    [InlineData("harm: damage", "harm: damage\nclosed: 2026-11-20", "'closed' is a day before 'known'.")]
    public void No_clock_is_stopped_before_it_runs(string from, string to, string says)
    {
        using var folder = new MakersFolder();
        folder.Change("incidents/bowl-tall-flame.yaml", from, to);
        (int code, _, string errors) = Command.Run("incidents", folder.Path);
        Assert.Equal(2, code);
        Assert.Contains(says, errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_report_that_answers_no_clock_is_told()
    {
        using var folder = new MakersFolder();
        folder.Change("incidents/bowl-tall-flame.yaml", "clock: danger", "clock: dangers");
        (int code, string output, string errors) = Command.Run("incidents", folder.Path);
        Assert.Equal(1, code);
        Assert.Contains("OVERDUE", output, StringComparison.Ordinal);
        Assert.Contains("answers 'dangers', which is no clock of this incident: here there is danger.", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Harm_that_nobody_knows_counts_as_the_worst() =>
        Assert.Equal("accident", Assert.Single(Clocks("IE", "unknown", Known)).Clock!.Id);

    [Fact]
    public void The_register_names_nobody()
    {
        using var folder = new MakersFolder();
        (int code, string output, _) = Command.Run("incidents", folder.Path, "--out", folder.Path);
        Assert.Equal(0, code);
        Assert.DoesNotContain("Orlane", output, StringComparison.Ordinal);
        using var pdf = new Paper.PdfReader(File.ReadAllBytes(Path.Combine(folder.Path, "register-of-complaints.pdf")));
        Assert.Contains("scorched a table mat", pdf.Text(0), StringComparison.Ordinal);
        Assert.DoesNotContain("Orlane", pdf.Text(0), StringComparison.Ordinal);
    }
}

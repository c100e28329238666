using Chandlery.Core.Declared;
using Chandlery.Core.SafetyFiles.Incidents;
using Chandlery.Yaml;

namespace Chandlery.Core.SafetyFiles.Records;

/// <summary>The register of complaints, accidents and letters of authorities. It names no person: their names stay in the declarations.</summary>
public static class ComplaintRecord
{
    /// <summary>The register.</summary>
    /// <param name="maker">Whose it is.</param>
    /// <param name="clocks">Incidents with their clocks.</param>
    /// <param name="day">The day.</param>
    public static KeptRecord Of(string maker, IReadOnlyList<IncidentClock> clocks, DateOnly day) =>
        new(
            "Register of complaints and accidents",
            maker,
            [
                $"As of {IsoDay.Plain(day)}. {clocks.Select(c => c.Incident).Distinct().Count()} entered. Persons are named in the maker's own files only.",
            ],
            [
                .. clocks
                    .GroupBy(c => c.Incident)
                    .Select(g => new RecordSection(
                        $"{g.Key.Id}: {g.Key.Kind.ToString().ToLowerInvariant()}, {g.Key.Candle.Id}{(g.Key.Batch is { } b ? $", {b.Id}" : "")}",
                        [Facts(g.Key), .. Clocks([.. g])]
                    )),
            ]
        );

    private static SafetyDataSheets.SheetBlock Facts(Incident i) =>
        RecordSection.Pairs(
            ("Known since", $"{IsoDay.Plain(i.Known)}, {i.Country}"),
            ("What happened", i.Happened),
            ("Harm", i.Harm.ToString().ToLowerInvariant()),
            ("Found", i.Found ?? "nothing yet"),
            ("Done", i.Done.Count == 0 ? "nothing yet" : string.Join("; ", i.Done.Select(d => $"{IsoDay.Plain(d.On)}: {d.What}"))),
            ("Closed", i.Closed is { } closed ? IsoDay.Plain(closed) : "open")
        );

    private static IReadOnlyList<SafetyDataSheets.SheetBlock> Clocks(IReadOnlyList<IncidentClock> clocks) =>
        RecordSection.Table(
            [44, 16, 14, 26],
            ["Report", "Last day", "State", "Where it stands"],
            [
                .. clocks
                    .Where(c => c.Clock is not null)
                    .Select(c => new[] { c.Clock!.Says, IsoDay.Plain(c.Due!.Value), Words(c), c.Clock.Clause.Text }),
            ],
            clocks[0].State == ClockState.Unknown
                ? $"No rule on reports is known for {clocks[0].Incident.Country}: look it up."
                : "No report to an authority is called for."
        );

    /// <summary>A clock's state in words.</summary>
    public static string Words(IncidentClock clock) =>
        clock.State switch
        {
            ClockState.Done => $"done {IsoDay.Plain(clock.Done!.Value)}",
            ClockState.DoneLate => $"done late, {IsoDay.Plain(clock.Done!.Value)}",
            ClockState.Open => "open",
            ClockState.Overdue => "OVERDUE",
            ClockState.NotDue => "not due",
            _ => "no rule known",
        };
}

using System.CommandLine;
using System.Text.Json;
using Chandlery.Core.SafetyFiles;
using Chandlery.Core.SafetyFiles.Incidents;
using Chandlery.Core.SafetyFiles.Recalls;
using Chandlery.Core.SafetyFiles.Records;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery incidents</c>: complaints and accidents with the clocks that run.</summary>
internal static class IncidentsCommand
{
    public static Command Build()
    {
        Option<bool> json = JsonOption.Of("incidents");
        Option<string?> into = KeptFolder.Out();
        return KeptFolder.Build(
            "incidents",
            "List complaints, accidents and letters of authorities with the reports that they call for, counted from the day of knowledge.",
            (folder, parse) => Run(folder, parse.GetValue(json), parse.GetValue(into)),
            json,
            into
        );
    }

    private static int Run(KeptFolder folder, bool json, string? into)
    {
        IReadOnlyList<IncidentClock> clocks = IncidentClocks.Of(folder.Catalogue, folder.Lawbook.Safety, folder.AsOf);
        var table = new TextTable("incident", "kind", "where", "known", "clock", "last day", "state", "what is due");
        foreach (IncidentClock c in clocks)
        {
            table.Add(
                c.Incident.Id,
                c.Incident.Kind.ToString().ToLowerInvariant(),
                c.Incident.Country,
                IsoDay.Plain(c.Incident.Known),
                c.Clock?.Id ?? "-",
                c.Due is { } due ? IsoDay.Plain(due) : "-",
                ComplaintRecord.Words(c),
                c.Clock is { } clock ? $"{clock.Says} ({clock.Clause})" : ""
            );
        }

        folder.Print(
            json,
            JsonSerializer.Serialize([.. clocks.Select(IncidentReportLine.Of)], SafetyFileJson.Plain.IncidentReportLineArray),
            table,
            "incident"
        );
        foreach (
            (Core.Declared.Incident incident, _, DateOnly until) in Forgetting.OverdueIncidents(
                folder.Catalogue,
                folder.Lawbook.Safety,
                folder.AsOf
            )
        )
        {
            folder.Session.Complain(
                $"{incident.Id}: the name of who told of it was allowed until {IsoDay.Plain(until)}: 'chandlery dispatches forget' takes it out."
            );
        }

        foreach (IGrouping<Core.Declared.Incident, IncidentClock> clocksOf in clocks.GroupBy(c => c.Incident))
        {
            List<string> known = [.. clocksOf.Select(c => c.Clock?.Id).OfType<string>()];
            foreach (Core.Declared.IncidentReport report in clocksOf.Key.Reported.Where(r => !known.Contains(r.Clock)))
            {
                folder.Session.Complain(
                    $"{clocksOf.Key.Id}: the report of {IsoDay.Plain(report.On)} answers '{report.Clock}', which is no clock of this incident{(known.Count == 0 ? "" : $": here there is {string.Join(", ", known)}")}."
                );
            }
        }

        folder.Write(ComplaintRecord.Of(folder.MakerName, clocks, folder.AsOf), "register-of-complaints", into);
        return clocks.Any(c => c.State is ClockState.Overdue or ClockState.Open or ClockState.Unknown) ? ExitCode.StopsSale : ExitCode.Fine;
    }
}

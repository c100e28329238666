namespace Chandlery.Core.SafetyFiles.Incidents;

/// <summary>A report that an incident calls for, for programs.</summary>
/// <param name="Incident">The incident's file name without its ending.</param>
/// <param name="Kind">complaint, accident or authority.</param>
/// <param name="Candle">The candle's file name without its ending.</param>
/// <param name="Country">Country code.</param>
/// <param name="Known">The day of knowledge.</param>
/// <param name="Clock">Short name of the rule; null when none.</param>
/// <param name="Says">What is due; empty when nothing.</param>
/// <param name="Due">The last day; null when none.</param>
/// <param name="Done">When it was made; null when it was not.</param>
/// <param name="State">done, doneLate, open, overdue, notDue or unknown.</param>
/// <param name="Clause">Where it stands; empty when nowhere.</param>
public sealed record IncidentReportLine(
    string Incident,
    string Kind,
    string Candle,
    string Country,
    string Known,
    string? Clock,
    string Says,
    string? Due,
    string? Done,
    string State,
    string Clause
)
{
    /// <summary>The line of a clock.</summary>
    public static IncidentReportLine Of(IncidentClock clock)
    {
        string state = clock.State.ToString();
        return new IncidentReportLine(
            clock.Incident.Id,
            clock.Incident.Kind.ToString().ToLowerInvariant(),
            clock.Incident.Candle.Id,
            clock.Incident.Country,
            Yaml.IsoDay.Plain(clock.Incident.Known),
            clock.Clock?.Id,
            clock.Clock?.Says ?? "",
            clock.Due is { } due ? Yaml.IsoDay.Plain(due) : null,
            clock.Done is { } done ? Yaml.IsoDay.Plain(done) : null,
            char.ToLowerInvariant(state[0]) + state[1..],
            clock.Clock?.Clause.Text ?? ""
        );
    }
}

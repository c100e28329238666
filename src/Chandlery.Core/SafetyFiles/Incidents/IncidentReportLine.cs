namespace Chandlery.Core.SafetyFiles.Incidents;

/// <summary>A report that an incident calls for, for programs.</summary>
public sealed record IncidentReportLine
{
    /// <summary>The incident's file name without its ending.</summary>
    public required string Incident { get; init; }

    /// <summary>complaint, accident or authority.</summary>
    public required string Kind { get; init; }

    /// <summary>The candle's file name without its ending.</summary>
    public required string Candle { get; init; }

    /// <summary>Country code.</summary>
    public required string Country { get; init; }

    /// <summary>The day of knowledge.</summary>
    public required string Known { get; init; }

    /// <summary>Short name of the rule; null when none.</summary>
    public required string? Clock { get; init; }

    /// <summary>What is due; empty when nothing.</summary>
    public required string Says { get; init; }

    /// <summary>The last day; null when none.</summary>
    public required string? Due { get; init; }

    /// <summary>When it was made; null when it was not.</summary>
    public required string? Done { get; init; }

    /// <summary>done, doneLate, open, overdue, notDue or unknown.</summary>
    public required string State { get; init; }

    /// <summary>Where it stands; empty when nowhere.</summary>
    public required string Clause { get; init; }

    /// <summary>The line of a clock.</summary>
    public static IncidentReportLine Of(IncidentClock clock) =>
        new()
        {
            Incident = clock.Incident.Id,
            Kind = clock.Incident.Kind.ToString().ToLowerInvariant(),
            Candle = clock.Incident.Candle.Id,
            Country = clock.Incident.Country,
            Known = Yaml.IsoDay.Plain(clock.Incident.Known),
            Clock = clock.Clock?.Id,
            Says = clock.Clock?.Says ?? "",
            Due = clock.Due is { } due ? Yaml.IsoDay.Plain(due) : null,
            Done = clock.Done is { } done ? Yaml.IsoDay.Plain(done) : null,
            State = Yaml.EnumName.Of(clock.State),
            Clause = clock.Clock?.Clause.Text ?? "",
        };
}

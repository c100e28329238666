using Chandlery.Core.Declared;
using Chandlery.Core.Law.ProductSafety;

namespace Chandlery.Core.SafetyFiles.Incidents;

/// <summary>Which reports incidents call for, and until when.</summary>
public static class IncidentClocks
{
    /// <summary>The clocks of all incidents, newest knowledge last; one line for an incident that calls for none.</summary>
    /// <param name="catalogue">The maker's declarations.</param>
    /// <param name="law">The law on product safety.</param>
    /// <param name="day">The day on which somebody asks.</param>
    public static IReadOnlyList<IncidentClock> Of(Catalogue catalogue, ProductSafetyLaw law, DateOnly day) =>
        [
            .. catalogue
                .OfKind<Incident>()
                .OrderBy(i => i.Known)
                .ThenBy(i => i.Id, StringComparer.Ordinal)
                .SelectMany(i => Of(i, law.For(law.Incidents, i.Country), day)),
        ];

    private static IEnumerable<IncidentClock> Of(Incident incident, IncidentRules? rules, DateOnly day)
    {
        if (rules is null)
        {
            return [new IncidentClock(incident, null, null, null, ClockState.Unknown)];
        }

        List<IncidentClock> clocks =
        [
            .. rules
                .Clocks.Where(c => c.Kinds.Contains(incident.Kind) && c.Harms.Contains(incident.Harm))
                .Select(c => Of(incident, c, day)),
        ];
        return clocks.Count > 0 ? clocks : [new IncidentClock(incident, null, null, null, ClockState.NotDue)];
    }

    private static IncidentClock Of(Incident incident, ClockRow clock, DateOnly day)
    {
        DateOnly due = clock.DueAfter(incident.Known);
        DateOnly? done = incident.Reported.Where(r => r.Clock == clock.Id).Select(r => (DateOnly?)r.On).Min();
        ClockState state = done is { } on
            ? on <= due
                ? ClockState.Done
                : ClockState.DoneLate
            : day > due
                ? ClockState.Overdue
                : ClockState.Open;
        return new IncidentClock(incident, clock, due, done, state);
    }
}

using Chandlery.Core.Declared;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading.ProductSafety;

/// <summary>Reads <c>incidents.yaml</c>: within which time incidents are reported.</summary>
internal static class IncidentReader
{
    private const double MostDays = 1000;
    private const double HoursOfDay = 24;

    public static IncidentRules Read(Fields fields)
    {
        var rules = new IncidentRules([.. fields.Groups("clocks").Select(ReadClock)]);
        fields.Done();
        return rules;
    }

    private static ClockRow ReadClock(Fields row)
    {
        string id = row.Text("id", "accident");
        IReadOnlyList<IncidentKind> kinds = row.Enumerations<IncidentKind>("kinds");
        IReadOnlyList<Harm> harms = row.Enumerations<Harm>("harms");
        double hours = row.Has("hours")
            ? row.NumberFrom("hours", 0, MostDays, "24")
            : HoursOfDay * row.NumberFrom("days", 0, MostDays, "2");
        var clock = new ClockRow(id, kinds, harms, hours, row.Text("says", "what is due, and to whom"), LawCodes.Citation(row));
        LawRows.Close(row);
        return clock;
    }
}

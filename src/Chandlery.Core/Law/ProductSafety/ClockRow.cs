using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law.ProductSafety;

/// <summary>Within which time an incident is reported.</summary>
/// <param name="Id">Short name.</param>
/// <param name="Kinds">Kinds of incident.</param>
/// <param name="Harms">Harm that calls for it.</param>
/// <param name="Hours">Hours after the maker came to know; 0 where the law says at once or without undue delay.</param>
/// <param name="Says">What is due, and to whom.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record ClockRow(
    string Id,
    IReadOnlyList<IncidentKind> Kinds,
    IReadOnlyList<Harm> Harms,
    double Hours,
    string Says,
    Citation Clause
)
{
    /// <summary>The last day, counted from the day of knowledge; that day itself where it is due at once.</summary>
    public DateOnly DueAfter(DateOnly known) => known.AddDays((int)Math.Ceiling(TimeSpan.FromHours(Hours).TotalDays));
}

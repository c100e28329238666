using Chandlery.Core.Declared;
using Chandlery.Core.Law.ProductSafety;

namespace Chandlery.Core.SafetyFiles.Incidents;

/// <summary>A report that an incident calls for.</summary>
/// <param name="Incident">The incident.</param>
/// <param name="Clock">The rule; null where none is known for the place.</param>
/// <param name="Due">The last day; the day of knowledge where it is due at once.</param>
/// <param name="Done">When it was made; null when it was not.</param>
/// <param name="State">How it stands on the day that was asked for.</param>
public sealed record IncidentClock(Incident Incident, ClockRow? Clock, DateOnly? Due, DateOnly? Done, ClockState State);

namespace Chandlery.Core.Declared;

/// <summary>A report that was made to an authority.</summary>
/// <param name="On">The day.</param>
/// <param name="Clock">Short name of the duty that it answers, as the list of incidents gives it.</param>
/// <param name="Reference">The authority's reference or where the report is kept; null when none is noted.</param>
public sealed record IncidentReport(DateOnly On, string Clock, string? Reference);

using Chandlery.Core.SafetyFiles.Duties;

namespace Chandlery.Workbench.Answers;

/// <summary>A duty, and what of the maker's shows that it is done.</summary>
/// <param name="Duty">The duty, in the published form.</param>
/// <param name="By">What shows it, in a word by which the page leads there.</param>
internal sealed record DutyOnDesk(DutyReport Duty, string By);

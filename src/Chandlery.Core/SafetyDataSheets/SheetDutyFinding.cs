using Chandlery.Core.Law;

namespace Chandlery.Core.SafetyDataSheets;

/// <summary>The duty with its reasons.</summary>
/// <param name="Duty">When the sheet is due.</param>
/// <param name="Reasons">Why, each with its clause.</param>
public sealed record SheetDutyFinding(SheetDuty Duty, IReadOnlyList<DutyClause> Reasons);

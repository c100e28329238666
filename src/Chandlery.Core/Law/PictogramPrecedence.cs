using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>A pictogram that displaces another.</summary>
/// <param name="WhenPresent">Pictogram that must be there.</param>
/// <param name="WhenStatement">Statement that must be there as well; null when none.</param>
/// <param name="LeaveOff">Pictogram that goes.</param>
/// <param name="CalledForOnlyBy">It goes only when nothing but these statements calls for it; empty when whatever does.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record PictogramPrecedence(
    Pictogram WhenPresent,
    StatementCode? WhenStatement,
    Pictogram LeaveOff,
    IReadOnlyList<StatementCode> CalledForOnlyBy,
    Citation Clause
);

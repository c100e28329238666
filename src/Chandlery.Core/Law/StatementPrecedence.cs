using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>A statement that makes others needless, or several that become one.</summary>
/// <param name="All">Statements that must be there.</param>
/// <param name="Use">Statement that is printed.</param>
/// <param name="LeaveOff">Statements that are left off.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record StatementPrecedence(
    IReadOnlyList<StatementCode> All,
    StatementCode Use,
    IReadOnlyList<StatementCode> LeaveOff,
    Citation Clause
);

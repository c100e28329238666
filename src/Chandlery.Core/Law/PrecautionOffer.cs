using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>A precautionary statement that the law offers.</summary>
/// <param name="Code">Code, combined where the law combines.</param>
/// <param name="For">Hazard statements that it is offered for.</param>
/// <param name="Rank">The lower, the more important.</param>
/// <param name="Use">How it is treated.</param>
/// <param name="CoveredBy">Statement that makes it needless; null when none.</param>
/// <param name="Because">The reason, for the trace.</param>
public sealed record PrecautionOffer(
    StatementCode Code,
    IReadOnlyList<StatementCode> For,
    int Rank,
    PrecautionUse Use,
    StatementCode? CoveredBy,
    string Because
);

using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>A precautionary statement that the law offers.</summary>
/// <param name="Code">Code, combined where the law combines.</param>
/// <param name="For">Hazard statements that it is offered for: law.</param>
/// <param name="Listed">False when the law's tables do not list it for these, and a duty asks for it all the same.</param>
/// <param name="Clause">Where that stands.</param>
/// <param name="Confidence">How the list was checked, and on what the choice rests.</param>
/// <param name="Condition">On what condition the law lists it; empty for none.</param>
/// <param name="Rank">The lower, the more important.</param>
/// <param name="Use">How it is treated.</param>
/// <param name="CoveredBy">Statement beside which it is not printed; null when none.</param>
/// <param name="Because">The reason, for the trace.</param>
public sealed record PrecautionOffer(
    StatementCode Code,
    IReadOnlyList<StatementCode> For,
    bool Listed,
    Citation Clause,
    string Confidence,
    string Condition,
    int Rank,
    PrecautionUse Use,
    StatementCode? CoveredBy,
    string Because
);

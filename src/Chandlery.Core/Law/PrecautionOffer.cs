using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>A precautionary statement that the law offers, and how it is chosen.</summary>
public sealed record PrecautionOffer
{
    /// <summary>Code, combined where the law combines.</summary>
    public required StatementCode Code { get; init; }

    /// <summary>Hazard statements that it is offered for: law.</summary>
    public required IReadOnlyList<StatementCode> For { get; init; }

    /// <summary>False when the law's tables do not list it for these, and a duty asks for it all the same.</summary>
    public required bool Listed { get; init; }

    /// <summary>Where that stands.</summary>
    public required Citation Clause { get; init; }

    /// <summary>How the list was checked, and on what the choice rests.</summary>
    public required string Confidence { get; init; }

    /// <summary>On what condition the law lists it; empty for none.</summary>
    public required string Condition { get; init; }

    /// <summary>The lower, the more important.</summary>
    public required int Rank { get; init; }

    /// <summary>How it is treated.</summary>
    public required PrecautionUse Use { get; init; }

    /// <summary>Statement beside which it is not printed; null when none.</summary>
    public required StatementCode? CoveredBy { get; init; }

    /// <summary>What it protects, where its text leaves that to the supplier.</summary>
    public required Protection Protects { get; init; }

    /// <summary>The reason, for the trace.</summary>
    public required string Because { get; init; }
}

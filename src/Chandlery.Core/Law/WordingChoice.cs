using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>Which wording is printed where the law words statements twice.</summary>
/// <param name="Codes">The statements.</param>
/// <param name="Taken">Where the wording stands that is printed.</param>
/// <param name="NotTaken">Where the other stands.</param>
/// <param name="Because">Why.</param>
/// <param name="Clause">Where the law says which one counts.</param>
/// <param name="Confidence">How that was checked.</param>
public sealed record WordingChoice(
    IReadOnlyList<StatementCode> Codes,
    string Taken,
    string NotTaken,
    string Because,
    Citation Clause,
    string Confidence
);

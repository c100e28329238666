using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law.ProductSafety;

/// <summary>What a recall holds, and how long its records are kept.</summary>
/// <param name="Parts">What its notice must say.</param>
/// <param name="Avoid">Words that would lessen the risk, in lower case.</param>
/// <param name="AvoidClause">Where that stands.</param>
/// <param name="Authority">To whom it is told, and how.</param>
/// <param name="AuthorityClause">Where that stands.</param>
/// <param name="Keep">How long things are kept.</param>
public sealed record RecallRules(
    IReadOnlyList<NoticeRow> Parts,
    IReadOnlyList<string> Avoid,
    Citation AvoidClause,
    string Authority,
    Citation AuthorityClause,
    IReadOnlyList<KeepRow> Keep
)
{
    /// <summary>How long something is kept; null where no rule is known.</summary>
    public KeepRow? KeepOf(Kept what) => Keep.FirstOrDefault(k => k.What == what);

    /// <summary>Those of the avoided words that a text holds.</summary>
    public IEnumerable<string> Lessening(string text) => Avoid.Where(w => text.Contains(w, StringComparison.OrdinalIgnoreCase));
}

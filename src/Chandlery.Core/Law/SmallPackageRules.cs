using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>Relief for small packages.</summary>
/// <param name="UpTo">Largest contents (inclusive).</param>
/// <param name="Clause">Where it stands.</param>
/// <param name="Rows">What may be left off.</param>
/// <param name="Inner">What the package itself bears where the label stands elsewhere.</param>
/// <param name="Tiny">Relief for tiny packages; null for none.</param>
public sealed record SmallPackageRules(
    Millilitres UpTo,
    Citation Clause,
    IReadOnlyList<Relief> Rows,
    IReadOnlyList<InnerPackageRule> Inner,
    TinyPackageRule? Tiny
)
{
    /// <summary>Where it stands that an outer package bears the labels that cannot be read through it; none where no rule is known.</summary>
    public Citation OuterClause { get; init; } = Citation.None;
}

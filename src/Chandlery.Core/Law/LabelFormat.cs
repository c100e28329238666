using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>How a label must look in a period.</summary>
/// <param name="Id">Short name.</param>
/// <param name="Status">Law or expected.</param>
/// <param name="From">First day.</param>
/// <param name="Clause">Where it stands.</param>
/// <param name="Bands">Sizes by capacity.</param>
/// <param name="XHeightClause">Where the letter height stands.</param>
/// <param name="LineSpacing">Least distance of lines as a multiple of the type size.</param>
/// <param name="LineSpacingClause">Where that stands.</param>
public sealed record LabelFormat(
    string Id,
    LegalStatus Status,
    DateOnly From,
    Citation Clause,
    IReadOnlyList<SizeBand> Bands,
    Citation XHeightClause,
    double LineSpacing,
    Citation LineSpacingClause
)
{
    /// <summary>The sizes for a package of this capacity.</summary>
    public SizeBand BandFor(Millilitres capacity) => Bands.First(b => b.UpTo is not { } upTo || capacity.Value <= upTo.Value);
}

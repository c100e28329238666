using Chandlery.Core.Declared;
using Chandlery.Core.Law;

namespace Chandlery.Core.Assessed;

/// <summary>What follows for a gift set under one edition of the law.</summary>
/// <param name="Set">The set.</param>
/// <param name="Edition">The law.</param>
/// <param name="Places">Its places of sale under that law.</param>
/// <param name="Lines">Its products.</param>
/// <param name="OnBox">The products whose labels the box must bear too.</param>
/// <param name="Findings">What the maker must know.</param>
public sealed record SetSheet(
    GiftSet Set,
    Edition Edition,
    IReadOnlyList<Place> Places,
    IReadOnlyList<SetLine> Lines,
    IReadOnlyList<SetLine> OnBox,
    IReadOnlyList<Finding> Findings
)
{
    /// <summary>True when something stops the sale.</summary>
    public bool StopsSale => Findings.Any(f => f.Gravity == Gravity.Stop);
}

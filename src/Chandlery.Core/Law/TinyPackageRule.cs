using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>What tiny packages may leave off altogether.</summary>
/// <param name="UpTo">Largest contents (inclusive).</param>
/// <param name="NotWith">Classes that take the relief away.</param>
/// <param name="Pictograms">Pictograms that stay where they are due, besides the product's name.</param>
/// <param name="InForce">When it holds.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record TinyPackageRule(
    Millilitres UpTo,
    IReadOnlyList<HazardCategory> NotWith,
    IReadOnlyList<Pictogram> Pictograms,
    InForce InForce,
    Citation Clause
);

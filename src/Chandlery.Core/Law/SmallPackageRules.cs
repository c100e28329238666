using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>Relief for small packages.</summary>
/// <param name="UpTo">Largest capacity (inclusive).</param>
/// <param name="Clause">Where it stands.</param>
/// <param name="Rows">What may be left off.</param>
public sealed record SmallPackageRules(Millilitres UpTo, Citation Clause, IReadOnlyList<Relief> Rows);

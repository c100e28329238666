using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>What the package itself bears where the label stands on a tag or on an outer package.</summary>
/// <param name="Bears">What it bears.</param>
/// <param name="InForce">When that holds.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record InnerPackageRule(IReadOnlyList<InnerElement> Bears, InForce InForce, Citation Clause);

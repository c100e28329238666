using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>When several mixtures may be told to the poison centres as one group.</summary>
/// <param name="SameClassesFor">Areas of hazard for which all must have the same classes.</param>
/// <param name="DifferingPerfumesUpTo">The most that the perfumes in which they differ may come to in each of them.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record GroupSubmissionRules(IReadOnlyList<HazardArea> SameClassesFor, MassPercent DifferingPerfumesUpTo, Citation Clause);

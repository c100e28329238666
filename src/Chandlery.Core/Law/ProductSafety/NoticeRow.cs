using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law.ProductSafety;

/// <summary>Something that a recall notice must say.</summary>
/// <param name="Part">What.</param>
/// <param name="Says">In words.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record NoticeRow(NoticePart Part, string Says, Citation Clause);

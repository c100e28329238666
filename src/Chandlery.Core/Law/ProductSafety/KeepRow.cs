using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law.ProductSafety;

/// <summary>How long something is kept.</summary>
/// <param name="What">What.</param>
/// <param name="Years">How many years.</param>
/// <param name="AtMost">True where it may not be kept longer; false where it must be kept so long.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record KeepRow(Kept What, int Years, bool AtMost, Citation Clause);

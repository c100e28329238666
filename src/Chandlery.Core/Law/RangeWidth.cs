using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>From a share on, the widest range that may be given.</summary>
/// <param name="From">The share; the edge belongs to this band.</param>
/// <param name="Points">Width of the range, percentage points.</param>
public sealed record RangeWidth(MassPercent From, double Points);

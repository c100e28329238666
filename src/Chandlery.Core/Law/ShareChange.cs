using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>How much a notified share may change before an update is due.</summary>
/// <param name="Above">Holds for shares of more than this.</param>
/// <param name="OfItselfPercent">The change, in percent of the share as notified.</param>
public sealed record ShareChange(MassPercent Above, double OfItselfPercent);

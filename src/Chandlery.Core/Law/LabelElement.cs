using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>What a category puts on the label.</summary>
/// <param name="Hazard">The category.</param>
/// <param name="Pictogram">GHS code, or null.</param>
/// <param name="SignalWord">Danger, Warning, or null.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record LabelElement(HazardCategory Hazard, Pictogram? Pictogram, SignalWord? SignalWord, Citation Clause);

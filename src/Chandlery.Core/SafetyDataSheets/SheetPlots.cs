namespace Chandlery.Core.SafetyDataSheets;

/// <summary>Plots side by side, of the same things.</summary>
/// <param name="About">What they show, in words, for those who cannot see them.</param>
/// <param name="Axis">What runs to the right, with its unit.</param>
/// <param name="Plots">The plots; one at least.</param>
public sealed record SheetPlots(string About, string Axis, IReadOnlyList<SheetPlot> Plots) : SheetBlock;

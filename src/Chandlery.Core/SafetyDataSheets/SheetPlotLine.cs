namespace Chandlery.Core.SafetyDataSheets;

/// <summary>A line of a plot.</summary>
/// <param name="Name">Of what.</param>
/// <param name="Points">Its points from left to right; no value where nothing was measured, and there the line is broken.</param>
public sealed record SheetPlotLine(string Name, IReadOnlyList<(double At, double? Value)> Points);

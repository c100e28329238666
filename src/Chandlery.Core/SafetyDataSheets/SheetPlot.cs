namespace Chandlery.Core.SafetyDataSheets;

/// <summary>A plot: a line for each of the things that were measured.</summary>
/// <param name="Title">What runs upwards, with its unit.</param>
/// <param name="Limit">What no value shall exceed; null where nothing is set.</param>
/// <param name="Lines">The lines.</param>
public sealed record SheetPlot(string Title, double? Limit, IReadOnlyList<SheetPlotLine> Lines);

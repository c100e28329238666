namespace Chandlery.Core.Declared;

/// <summary>A colour as a maker declares it.</summary>
/// <param name="Screen">As screens show it, <c>#RRGGBB</c>.</param>
/// <param name="Process">Cyan, magenta, yellow and black in percent; null to have them reckoned from the screen's colour.</param>
/// <param name="Spot">Name of a spot ink; null for none.</param>
public sealed record Tint(string Screen, IReadOnlyList<double>? Process, string? Spot);

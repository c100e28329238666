namespace Chandlery.Paper.Designs;

/// <summary>The part of a circle that letters stand on.</summary>
/// <param name="Centre">The circle's middle, millimetres.</param>
/// <param name="Radius">Radius of the baseline, millimetres.</param>
/// <param name="SpanDegrees">Longest arc.</param>
/// <param name="AtBottom">True to read along the lower half.</param>
internal sealed record TextArc((double X, double Y) Centre, double Radius, double SpanDegrees, bool AtBottom);

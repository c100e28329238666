namespace Chandlery.Core.Making.Layouts;

/// <summary>How far a wall is.</summary>
/// <param name="Mm">Millimetres; negative outside.</param>
/// <param name="AwayX">Which way the distance grows, to the right.</param>
/// <param name="AwayY">Which way the distance grows, upwards.</param>
internal readonly record struct WallDistance(double Mm, double AwayX, double AwayY);

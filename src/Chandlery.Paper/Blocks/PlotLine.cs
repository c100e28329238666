namespace Chandlery.Paper.Blocks;

/// <summary>A line of a plot.</summary>
/// <param name="Name">Of what.</param>
/// <param name="Points">Its points from left to right; no value where nothing was measured.</param>
internal sealed record PlotLine(string Name, IReadOnlyList<(double At, double? Value)> Points);

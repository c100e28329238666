namespace Chandlery.Workbench;

/// <summary>Where a consequence holds along the load.</summary>
/// <param name="What">The consequence.</param>
/// <param name="Spans">From and to, percent in the plot's basis.</param>
internal sealed record PlotLane(string What, IReadOnlyList<double[]> Spans);

namespace Chandlery.Workbench.Answers;

/// <summary>An oil that can be chosen, with what its measures weigh.</summary>
/// <param name="Id">Name of its declaration.</param>
/// <param name="Name">Trade name.</param>
/// <param name="GramsPerMl">Density; null when it is not declared.</param>
/// <param name="GramsPerDrop">Mass of a drop; null when it is not declared.</param>
internal sealed record OilName(string Id, string Name, double? GramsPerMl, double? GramsPerDrop);

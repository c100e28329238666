namespace Chandlery.Workbench.Answers;

/// <summary>An oil that can be chosen.</summary>
/// <param name="Id">Name of its declaration.</param>
/// <param name="Name">Trade name.</param>
internal sealed record OilName(string Id, string Name);

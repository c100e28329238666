namespace Chandlery.Workbench.Answers;

/// <summary>A place of sale that can be chosen.</summary>
/// <param name="Code">Its code.</param>
/// <param name="Name">Its English name.</param>
internal sealed record PlaceOffer(string Code, string Name);

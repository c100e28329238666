namespace Chandlery.Core.Hazards;

/// <summary>A hazard class and category that a supplier or a list gives a substance.</summary>
/// <param name="Category">The category.</param>
/// <param name="Statement">Its statement as given, such as <c>H361d</c>; the category's own when none was given.</param>
public sealed record HazardClaim(HazardCategory Category, string Statement);

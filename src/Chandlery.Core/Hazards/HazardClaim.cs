namespace Chandlery.Core.Hazards;

/// <summary>A hazard class and category that a supplier or a list gives a substance.</summary>
/// <param name="Category">The category.</param>
/// <param name="Statement">Its statement as given, such as <c>H361d</c>; the category's own when none was given.</param>
/// <param name="Organs">The organs that it names (<c>H373 (kidneys)</c>); empty when it names none.</param>
public sealed record HazardClaim(HazardCategory Category, StatementCode Statement, string Organs = "");

namespace Chandlery.Core.Asked.Substances;

/// <summary>A harmonised class.</summary>
/// <param name="Class">Class and category.</param>
/// <param name="Statement">Its statement as the table prints it; empty for a class without one.</param>
/// <param name="Minimum">True where a more severe class goes before it.</param>
/// <param name="RouteOpen">True where the table leaves open by which route it harms (**), so that none is named.</param>
/// <param name="Computed">False for a class that no rule of this program computes.</param>
public sealed record ClassAnswer(string Class, string Statement, bool Minimum, bool RouteOpen, bool Computed);

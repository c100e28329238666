using Chandlery.Core.Quantities;

namespace Chandlery.Core.Making;

/// <summary>How the wicks stand.</summary>
/// <param name="Count">Declared count.</param>
/// <param name="Spacing">Distance between neighbours when they share the surface evenly; null when the vessel's inside is not declared.</param>
/// <param name="Note">In words.</param>
public sealed record WickPlan(int Count, Millimetres? Spacing, string Note);

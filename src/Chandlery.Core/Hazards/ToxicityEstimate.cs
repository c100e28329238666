namespace Chandlery.Core.Hazards;

/// <summary>An acute toxicity estimate (ATE), LD50 or LC50.</summary>
/// <param name="Route">The route, which fixes the unit.</param>
/// <param name="Value">The figure in the route's unit.</param>
public sealed record ToxicityEstimate(ExposureRoute Route, double Value);

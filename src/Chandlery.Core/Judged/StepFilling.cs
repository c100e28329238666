using Chandlery.Core.Hazards;

namespace Chandlery.Core.Judged;

/// <summary>How far one step of a rule is filled.</summary>
/// <param name="Result">What the mixture would be classified as.</param>
/// <param name="Filling">1 where the step is just reached.</param>
/// <param name="Limit">Its limit, as written for people.</param>
public sealed record StepFilling(HazardCategory Result, double Filling, string Limit);

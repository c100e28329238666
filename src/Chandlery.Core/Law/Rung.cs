using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>One step of a rule.</summary>
/// <param name="Result">What the mixture is classified as when the step is reached.</param>
/// <param name="Terms">What is counted; a substance counts in the first term that fits it.</param>
/// <param name="Limit">The limit in percent.</param>
/// <param name="OnlyWith">What must be in the mixture for the step to be looked at; null for nothing.</param>
public sealed record Rung(HazardCategory Result, IReadOnlyList<Term> Terms, MassPercent Limit, RungCondition? OnlyWith);

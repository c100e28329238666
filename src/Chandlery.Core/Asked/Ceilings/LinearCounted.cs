namespace Chandlery.Core.Asked.Ceilings;

/// <summary>A substance that a rung counts.</summary>
internal sealed record LinearCounted(LinearSubstance Substance, double OwnLimit, double IgnoreBelow);

namespace Chandlery.Core.Asked.Ceilings;

/// <summary>A substance that a rung counts.</summary>
internal sealed record Counted(LinearSubstance Substance, double OwnLimit, double IgnoreBelow);

namespace Chandlery.Tests.SecondCalculation;

/// <summary>A mixture as declared. What is left to 100 % beside substances and undeclared rest is harmless.</summary>
/// <param name="Substances">Its substances, each once.</param>
/// <param name="UndeclaredPercent">What nobody has declared, percent by mass of the mixture.</param>
/// <param name="Liquid">What is known of it as a liquid; null for a solid.</param>
internal sealed record GivenMixture(IReadOnlyList<GivenSubstance> Substances, double UndeclaredPercent, GivenLiquid? Liquid);

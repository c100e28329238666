namespace Chandlery.Tests.SecondCalculation;

/// <summary>A substance's part in a class of the mixture.</summary>
/// <param name="Name">The substance.</param>
/// <param name="Weight">Its share over its limit, or another measure that is the same for all substances of one class.</param>
internal sealed record Cause(string Name, double Weight);

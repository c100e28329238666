namespace Chandlery.Tests.SecondCalculation;

/// <summary>An acute toxicity estimate as a supplier gives it.</summary>
/// <param name="Form">Route and form, which fix the unit.</param>
/// <param name="Figure">The estimate in the unit of <paramref name="Form"/>.</param>
internal sealed record GivenEstimate(GivenForm Form, double Figure);

using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>A share of a whole that whoever holds the amount names.</summary>
/// <param name="Percent">The share.</param>
public sealed record RelativeAmount(MassPercent Percent) : Amount;

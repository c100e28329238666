namespace Chandlery.Tests.Law;

/// <summary>What a random product is made of, in the words of declarations.</summary>
/// <param name="Load">Percent of oil.</param>
/// <param name="First">Ingredients of the first oil, a line each.</param>
/// <param name="Second">Those of the second.</param>
/// <param name="Other">The ingredient of an extra, and of a base beside its carrier.</param>
/// <param name="Measured">What was measured of a liquid beside its density, each field with a comma before it; empty for nothing.</param>
/// <param name="IsOld">Whether it has been sold for years.</param>
public sealed record RandomBlend(double Load, string[] First, string[] Second, string Other, string Measured, bool IsOld);

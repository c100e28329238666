namespace Chandlery.Core.Making;

/// <summary>A temperature of the work, as told to programs.</summary>
/// <param name="Step">Melting, adding the oil, pouring, topping up.</param>
/// <param name="Celsius">The declared temperature; null when none is declared.</param>
/// <param name="Note">What to mind.</param>
public sealed record BenchStep(string Step, double? Celsius, string Note);

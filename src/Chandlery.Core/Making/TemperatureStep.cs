using Chandlery.Core.Quantities;

namespace Chandlery.Core.Making;

/// <summary>A temperature of the work with the flash points that matter beside it.</summary>
/// <param name="Step">Melting, adding the oil, pouring, topping up.</param>
/// <param name="Temperature">The declared temperature; null when none is declared.</param>
/// <param name="Note">What to mind.</param>
public sealed record TemperatureStep(string Step, Celsius? Temperature, string Note);

namespace Chandlery.Workbench.Answers;

/// <summary>A temperature of the work.</summary>
/// <param name="Step">The step.</param>
/// <param name="Celsius">The declared temperature; null when none is.</param>
/// <param name="Note">What to mind.</param>
internal sealed record BenchTemperature(string Step, double? Celsius, string Note);

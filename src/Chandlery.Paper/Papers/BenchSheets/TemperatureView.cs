using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.BenchSheets;

/// <summary>A temperature to keep.</summary>
/// <param name="Step">When.</param>
/// <param name="At">The temperature with its unit, or that none is declared.</param>
/// <param name="Note">What to mind.</param>
internal sealed record TemperatureView(string Step, string At, string Note) : IView
{
    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values => [("step", Step), ("at", At), ("note", Note)];
}

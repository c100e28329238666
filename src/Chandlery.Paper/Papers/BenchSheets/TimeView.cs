using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.BenchSheets;

/// <summary>A time to keep.</summary>
/// <param name="Step">For what.</param>
/// <param name="Time">How long.</param>
/// <param name="Source">Where it comes from.</param>
internal sealed record TimeView(string Step, string Time, string Source) : IView
{
    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values => [("step", Step), ("time", Time), ("source", Source)];
}

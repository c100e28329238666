using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.BenchSheets;

/// <summary>Something to weigh.</summary>
/// <param name="Name">What.</param>
/// <param name="Kind">Wax, oil or extra.</param>
/// <param name="Mass">How much, with its unit.</param>
internal sealed record PortionView(string Name, string Kind, string Mass) : IView
{
    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values => [("name", Name), ("kind", Kind), ("mass", Mass)];
}

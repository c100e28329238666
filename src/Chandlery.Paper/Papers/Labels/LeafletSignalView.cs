using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.Labels;

/// <summary>The signal word on the front of a leaflet, in one language.</summary>
/// <param name="Tag">The language's code where the label has several.</param>
/// <param name="Word">Signal word; empty where there is none.</param>
internal sealed record LeafletSignalView(string Tag, string Word) : IView
{
    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values => [("tag", Tag), ("word", Word)];
}

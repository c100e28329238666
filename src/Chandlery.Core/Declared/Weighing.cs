using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>Candles of a batch that were weighed to check their contents.</summary>
public sealed record Weighing : IDeclaration
{
    /// <summary>File name without its ending.</summary>
    public required string Id { get; init; }

    /// <summary>Where it is declared.</summary>
    public required TextPlace Place { get; init; }

    /// <summary>The batch.</summary>
    public required Reference Batch { get; init; }

    /// <summary>The day.</summary>
    public required DateOnly On { get; init; }

    /// <summary>Who weighed.</summary>
    public required string By { get; init; }

    /// <summary>What an empty package weighs.</summary>
    public required Grams Tare { get; init; }

    /// <summary>What each full package weighs.</summary>
    public required IReadOnlyList<Grams> Gross { get; init; }
}

using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>Candles of a batch that went to somebody.</summary>
public sealed record Dispatch : IDeclaration
{
    /// <summary>File name without its ending.</summary>
    public required string Id { get; init; }

    /// <summary>Where it is declared.</summary>
    public required TextPlace Place { get; init; }

    /// <summary>The batch.</summary>
    public required Reference Batch { get; init; }

    /// <summary>The day.</summary>
    public required DateOnly On { get; init; }

    /// <summary>How many candles.</summary>
    public required int Pieces { get; init; }

    /// <summary>Country code of the place that they went to.</summary>
    public required string Country { get; init; }

    /// <summary>To whom.</summary>
    public required ReceiverKind ToWhom { get; init; }

    /// <summary>Who that is; null when forgotten.</summary>
    public required Receiver? Receiver { get; init; }

    /// <summary>When name and address were taken out; null when they stand.</summary>
    public required DateOnly? Forgotten { get; init; }
}

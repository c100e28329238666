namespace Chandlery.Core.SafetyFiles.Recalls;

/// <summary>A batch of a recall for programs.</summary>
public sealed record RecalledBatchReport
{
    /// <summary>Batch code.</summary>
    public required string Batch { get; init; }

    /// <summary>Trade name.</summary>
    public required string Candle { get; init; }

    /// <summary>Why it is reached.</summary>
    public required string Why { get; init; }

    /// <summary>False where it only cannot be ruled out.</summary>
    public required bool IsCertain { get; init; }

    /// <summary>How many were made; null when not noted.</summary>
    public required int? Made { get; init; }

    /// <summary>How many went out.</summary>
    public required int Dispatched { get; init; }

    /// <summary>How many must be left; null when not known.</summary>
    public required int? Left { get; init; }

    /// <summary>Who has them.</summary>
    public required IReadOnlyList<ReceiverReport> Receivers { get; init; }
}

using Chandlery.Core.Hazards;

namespace Chandlery.Core.Classified;

/// <summary>How a result was found.</summary>
public sealed record Working
{
    /// <summary>What was computed, in words and signs.</summary>
    public required string Formula { get; init; }

    /// <summary>The inputs.</summary>
    public required IReadOnlyList<WorkingLine> Lines { get; init; }

    /// <summary>What came out; null where a document gave the class and no figure decided.</summary>
    public required double? Value { get; init; }

    /// <summary>What it was compared with.</summary>
    public required double Threshold { get; init; }

    /// <summary>Unit of both.</summary>
    public required string Unit { get; init; }

    /// <summary>Where the rule stands.</summary>
    public required Citation Clause { get; init; }

    /// <summary>The same for a reader who is no chemist.</summary>
    public required string Sentence { get; init; }

    /// <summary>How the rule's row was checked.</summary>
    public required string Confidence { get; init; }
}

using Chandlery.Register;

namespace Chandlery.Workbench.Answers;

/// <summary>An entry of the register.</summary>
internal sealed record RegisterLine
{
    /// <summary>Its number.</summary>
    public required long Number { get; init; }

    /// <summary>When it was made, in UTC.</summary>
    public required string At { get; init; }

    /// <summary>Who issued.</summary>
    public required string By { get; init; }

    /// <summary>Batch code; the candle's name when it has none.</summary>
    public required string Batch { get; init; }

    /// <summary>Name of the batch's or candle's declaration.</summary>
    public required string Subject { get; init; }

    /// <summary>The candle's trade name.</summary>
    public required string Candle { get; init; }

    /// <summary>Edition of the law and the day that it was asked for.</summary>
    public required string Law { get; init; }

    /// <summary>The oils with the documents that their facts come from.</summary>
    public required IReadOnlyList<string> Oils { get; init; }

    /// <summary>Substances of the finished candle.</summary>
    public required IReadOnlyList<string> Substances { get; init; }

    /// <summary>The papers, with their hashes.</summary>
    public required IReadOnlyList<IssuedDocument> Documents { get; init; }

    /// <summary>The declarations as they were, with the hashes under which their texts are held.</summary>
    public required IReadOnlyList<UsedDeclaration> Declarations { get; init; }

    /// <summary>Hash of the entry.</summary>
    public required string Hash { get; init; }
}

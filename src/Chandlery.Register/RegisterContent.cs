namespace Chandlery.Register;

/// <summary>What is written into the register when labels are issued.</summary>
public sealed record RegisterContent
{
    /// <summary>Batch code; the candle's name when it has none.</summary>
    public required string Batch { get; init; }

    /// <summary>Name of the batch's or candle's declaration.</summary>
    public required string Subject { get; init; }

    /// <summary>The candle's trade name.</summary>
    public required string Candle { get; init; }

    /// <summary>Edition of the law.</summary>
    public required string Edition { get; init; }

    /// <summary>Day whose law was applied, year-month-day.</summary>
    public required string AsOf { get; init; }

    /// <summary>When the edition's sources were last looked up.</summary>
    public required string LawLookedUp { get; init; }

    /// <summary>The assessment as JSON.</summary>
    public required string Result { get; init; }

    /// <summary>The exact declarations.</summary>
    public required IReadOnlyList<UsedDeclaration> Declarations { get; init; }

    /// <summary>Oils with their documents.</summary>
    public required IReadOnlyList<UsedOil> Oils { get; init; }

    /// <summary>Substances of the finished candle.</summary>
    public required IReadOnlyList<HeldSubstance> Substances { get; init; }

    /// <summary>Documents issued.</summary>
    public required IReadOnlyList<IssuedDocument> Documents { get; init; }
}

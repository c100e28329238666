namespace Chandlery.Workbench.Answers;

/// <summary>A declaration in a line.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Name">What people call it.</param>
/// <param name="Detail">What tells it from others: its supplier, material or day; empty for nothing.</param>
/// <param name="Asks">What somebody must do with it, in a sentence; null for nothing.</param>
internal sealed record SupplyLine(string Id, string Name, string Detail, string? Asks)
{
    /// <summary>Mass of a millilitre, g; null when it is not declared or it is no oil.</summary>
    public double? GramsPerMl { get; init; }

    /// <summary>Mass of a drop, g; null when it is not declared or it is no oil.</summary>
    public double? GramsPerDrop { get; init; }

    /// <summary>The note that an oil plays; null for none.</summary>
    public string? Note { get; init; }
}

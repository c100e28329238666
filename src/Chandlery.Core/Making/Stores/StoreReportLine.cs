namespace Chandlery.Core.Making.Stores;

/// <summary>A material in store, as told to programs. What is not known is null.</summary>
public sealed record StoreReportLine
{
    /// <summary>Oil, wax, extra, vessel, wick or packaging.</summary>
    public required string Kind { get; init; }

    /// <summary>File name without ending, or what the candles call it.</summary>
    public required string Id { get; init; }

    /// <summary>What people call it.</summary>
    public required string Name { get; init; }

    /// <summary>g or pieces.</summary>
    public required string Unit { get; init; }

    /// <summary>How much was bought.</summary>
    public required double? In { get; init; }

    /// <summary>How much went into batches.</summary>
    public required double? Out { get; init; }

    /// <summary>How much is left.</summary>
    public required double? Left { get; init; }

    /// <summary>What is to be minded.</summary>
    public required IReadOnlyList<string> Notes { get; init; }

    /// <summary>The line of a material.</summary>
    public static StoreReportLine Of(StoreLine line) =>
        new()
        {
            Kind = line.Material.Content.ToString().ToLowerInvariant(),
            Id = line.Material.Id,
            Name = line.Name,
            Unit = line.Material.Unit,
            In = Rounded(line.In),
            Out = Rounded(line.Out),
            Left = Rounded(line.Left),
            Notes = line.Notes,
        };

    private static double? Rounded(double? amount) => amount is { } a ? Math.Round(a, 2) : null;
}

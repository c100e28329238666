namespace Chandlery.Core.SafetyFiles.Listings;

/// <summary>A listing for programs.</summary>
public sealed record ListingReport
{
    /// <summary>The candle's or batch's file name without its ending.</summary>
    public required string Candle { get; init; }

    /// <summary>Trade name.</summary>
    public required string Name { get; init; }

    /// <summary>The edition of the law.</summary>
    public required string Law { get; init; }

    /// <summary>Country codes of the places of sale.</summary>
    public required IReadOnlyList<string> Places { get; init; }

    /// <summary>The day whose law holds.</summary>
    public required string AsOf { get; init; }

    /// <summary>Code of the language.</summary>
    public required string Language { get; init; }

    /// <summary>shop or advert.</summary>
    public required string Use { get; init; }

    /// <summary>Its parts.</summary>
    public required IReadOnlyList<ListingPartReport> Parts { get; init; }

    /// <summary>What must be looked at.</summary>
    public required IReadOnlyList<string> Look { get; init; }
}

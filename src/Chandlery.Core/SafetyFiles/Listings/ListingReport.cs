namespace Chandlery.Core.SafetyFiles.Listings;

/// <summary>A listing for programs.</summary>
/// <param name="Candle">The candle's or batch's file name without its ending.</param>
/// <param name="Name">Trade name.</param>
/// <param name="Law">The edition of the law.</param>
/// <param name="Places">Country codes of the places of sale.</param>
/// <param name="AsOf">The day whose law holds.</param>
/// <param name="Language">Code of the language.</param>
/// <param name="Use">shop or advert.</param>
/// <param name="Parts">Its parts.</param>
/// <param name="Look">What must be looked at.</param>
public sealed record ListingReport(
    string Candle,
    string Name,
    string Law,
    IReadOnlyList<string> Places,
    string AsOf,
    string Language,
    string Use,
    IReadOnlyList<ListingPartReport> Parts,
    IReadOnlyList<string> Look
);

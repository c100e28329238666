using Chandlery.Core.Assessed;
using Chandlery.Core.Law.ProductSafety;

namespace Chandlery.Core.SafetyFiles.Listings;

/// <summary>What a shop or an advertisement says of a candle in one language.</summary>
/// <param name="Of">The candle.</param>
/// <param name="Language">Code of the language.</param>
/// <param name="Use">Shop or advertisement.</param>
/// <param name="Lines">Its parts, in order.</param>
/// <param name="Look">What must be looked at before it is shown.</param>
public sealed record ShopListing(
    Assessment Of,
    string Language,
    ListingUse Use,
    IReadOnlyList<ListingLine> Lines,
    IReadOnlyList<string> Look
);

using Chandlery.Core.Assessed;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Core.SafetyFiles.Listings;

namespace Chandlery.Cli.Commands;

/// <summary>Makes listings of candles and says of each that is refused why.</summary>
internal sealed class ListingRun(Session session, ListingUse use, string? onlyLanguage)
{
    /// <summary>Whether one at least was refused.</summary>
    public bool Refused { get; private set; }

    /// <summary>The listings of a candle, a language each.</summary>
    public IReadOnlyList<ShopListing> Listings(Assessment a)
    {
        OfferedListings offered = OfferedListings.Of(a, session.Lawbook, use, onlyLanguage);
        foreach (string why in offered.Refused)
        {
            Refused = true;
            session.Complain($"{a.Id} ({a.Edition.Id}): no listing: {why}");
        }

        return offered.Made;
    }
}

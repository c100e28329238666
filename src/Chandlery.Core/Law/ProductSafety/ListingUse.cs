namespace Chandlery.Core.Law.ProductSafety;

/// <summary>Where a candle is shown to buyers who have no label before them.</summary>
public enum ListingUse
{
    /// <summary>An offer that can be bought from at a distance.</summary>
    Shop,

    /// <summary>An advertisement.</summary>
    Advert,
}

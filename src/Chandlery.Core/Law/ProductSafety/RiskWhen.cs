namespace Chandlery.Core.Law.ProductSafety;

/// <summary>For which candles a risk is looked at.</summary>
public enum RiskWhen
{
    /// <summary>All.</summary>
    Always,

    /// <summary>Those in glass.</summary>
    Glass,

    /// <summary>Those in a vessel that is not of glass.</summary>
    OtherVessel,

    /// <summary>Those for indoors.</summary>
    Indoor,

    /// <summary>Those for outdoors.</summary>
    Outdoor,

    /// <summary>Those with more than one wick.</summary>
    SeveralWicks,

    /// <summary>Those with oil.</summary>
    Scented,

    /// <summary>Those whose label names sensitisers or shows hazards.</summary>
    Hazards,
}

namespace Chandlery.Core.Declared;

/// <summary>What a fragrance load is a percentage of.</summary>
public enum LoadBasis
{
    /// <summary>Oil per 100 parts of wax.</summary>
    Wax,

    /// <summary>Oil in 100 parts of the scented melt (wax, oil and extras together).</summary>
    Candle,
}

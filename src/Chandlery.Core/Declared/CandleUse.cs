namespace Chandlery.Core.Declared;

/// <summary>Where a candle is meant to burn.</summary>
public enum CandleUse
{
    /// <summary>In the house (EN 15494).</summary>
    Indoor,

    /// <summary>Out of doors (EN 17617).</summary>
    Outdoor,
}

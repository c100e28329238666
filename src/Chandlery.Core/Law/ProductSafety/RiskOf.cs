namespace Chandlery.Core.Law.ProductSafety;

/// <summary>The sort of product that a risk is one of.</summary>
public enum RiskOf
{
    /// <summary>What burns with a flame of its own.</summary>
    Burning,

    /// <summary>Wax that is melted in a warmer.</summary>
    Warmed,

    /// <summary>Liquids.</summary>
    Liquid,
}

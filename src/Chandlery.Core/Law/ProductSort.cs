namespace Chandlery.Core.Law;

/// <summary>The sorts of product that risks and duties are told apart by.</summary>
public enum ProductSort
{
    /// <summary>What burns with a flame of its own.</summary>
    Burning,

    /// <summary>Wax that is melted in a warmer.</summary>
    Warmed,

    /// <summary>Liquids.</summary>
    Liquid,
}

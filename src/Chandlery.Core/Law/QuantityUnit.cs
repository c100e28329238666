namespace Chandlery.Core.Law;

/// <summary>A unit of net quantity on labels.</summary>
public enum QuantityUnit
{
    /// <summary>Grams.</summary>
    Grams,

    /// <summary>Avoirdupois ounces.</summary>
    Ounces,
}

namespace Chandlery.Core.Declared;

/// <summary>The note that an oil plays in a blend, as perfumers group them (common practice, no source).</summary>
public enum Scent
{
    /// <summary>Peel of citrus fruit.</summary>
    Citrus,

    /// <summary>Green leaves and herbs.</summary>
    Leaf,

    /// <summary>Flowers.</summary>
    Flower,

    /// <summary>Spices.</summary>
    Spice,

    /// <summary>Woods.</summary>
    Wood,

    /// <summary>Resins and balsams.</summary>
    Resin,

    /// <summary>Smoke and leather.</summary>
    Smoke,

    /// <summary>Sea and rain.</summary>
    Sea,

    /// <summary>Sweet things.</summary>
    Sweet,

    /// <summary>Soap and linen.</summary>
    Clean,
}
